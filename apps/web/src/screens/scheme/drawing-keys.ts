import type { Hand } from "../../hand/use-hand.ts";

/** Arrow steps are committed when the key comes up; returns how to stop listening. */
export function drawingKeys(hand: Pick<Hand, "held" | "drop">): () => void {
  const release = (event: KeyboardEvent) => {
    if (event.key.startsWith("Arrow") && hand.held?.kind === "steps") hand.drop();
  };
  addEventListener("keyup", release);
  return () => removeEventListener("keyup", release);
}
