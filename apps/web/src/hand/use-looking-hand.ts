import { useState } from "react";
import type { Hand } from "./use-hand.ts";

/** A hand that only points: it chooses and draws nothing. */
export function useLookingHand(): Pick<Hand, "chosenId" | "choose" | "pressAt" | "moveTo" | "drop" | "held" | "tool"> {
  const [chosenId, choose] = useState<string | null>(null);
  return {
    chosenId,
    choose,
    pressAt: (picked) => choose(picked?.id ?? null),
    moveTo: () => undefined,
    drop: () => undefined,
    held: null,
    tool: null,
  };
}
