import { startTransition, useRef, useState } from "react";
import type { Held } from "./held.ts";
import { Lift, type Carried } from "./lift.ts";

/** What the hand holds: taken up and let go of, which draws it anew, or carried on lifted, which draws it once it rests. */
export function useHeld() {
  /** What is held, as it is drawn; `lift` has where the hand has carried it since. */
  const [held, setHeld] = useState<Held | null>(null);
  const [lift] = useState(() => new Lift());
  const [lifted, setLifted] = useState(false);
  /** What is being drawn where the hand rested, from then on. */
  const resting = useRef<Held | null>(null);

  const hold = (next: Held | null) => {
    lift.end();
    resting.current = null;
    setLifted(false);
    setHeld(next);
  };

  const carryOn = (carried: Carried) => {
    if (lift.now() === null) startTransition(() => setLifted(true));
    // the hand moves on before what was begun where it rested is drawn
    if (resting.current !== null && resting.current !== held) startTransition(() => setHeld(held));
    resting.current = null;
    lift.carry(carried, (come) => {
      resting.current = carried.held;
      startTransition(() => {
        setHeld(carried.held);
        come();
      });
    });
  };

  return { held, lift, lifted, hold, heldNow: () => lift.now()?.held ?? held, carryOn };
}
