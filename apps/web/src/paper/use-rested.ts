import { useEffect, useState } from "react";

/** How long the hand rests before what is slow to draw follows it, ms. */
const restMs = 120;

/** A value as it is while nothing is held; while something is, as it was when the hand last rested for a moment. */
export function useRested<Value extends object | null>(value: Value, inHand: boolean): Value {
  const [rested, setRested] = useState(value);
  useEffect(() => {
    if (!inHand) return undefined;
    const timer = setTimeout(() => setRested(value), restMs);
    return () => clearTimeout(timer);
  }, [value, inHand]);
  if (inHand) return rested;
  if (rested !== value) setRested(value);
  return value;
}
