import { useState } from "react";
import { Lift } from "./lift.ts";
import type { Hand } from "./use-hand.ts";

/** What a sheet needs of a hand. */
export type PointingHand = Pick<
  Hand,
  "chosenId" | "chosenIds" | "choose" | "focused" | "pressAt" | "moveTo" | "drop" | "hold" | "held" | "lift" | "tool"
>;

/** A hand that only points: it chooses and draws nothing. */
export function useLookingHand(): PointingHand {
  const [chosenId, choose] = useState<string | null>(null);
  const [lift] = useState(() => new Lift());
  return {
    chosenId,
    chosenIds: chosenId === null ? [] : [chosenId],
    choose,
    focused: choose,
    pressAt: (picked) => choose(picked?.id ?? null),
    moveTo: () => undefined,
    drop: () => undefined,
    hold: () => undefined,
    held: null,
    lift,
    tool: null,
  };
}
