import { useEffect, useState } from "react";
import { restMs } from "../hand/lift.ts";

/** A value as it is while nothing is held; while something is, as it was when the hand last rested for a moment. */
export function useRested<Value>(value: Value, inHand: boolean): Value {
  const [rested, setRested] = useState({ value });
  useEffect(() => {
    const timer = setTimeout(() => setRested({ value }), restMs);
    return () => clearTimeout(timer);
  }, [value]);
  return inHand ? rested.value : value;
}
