import { cos, sin } from "./sine-cosine.ts";

/** Sine of an angle given in whole thousandths of a degree; exactly 0, ±1/2 or ±1 where the true value is. */
export function sinDegThousandths(angle: number): number {
  const turn = within(angle);
  if (turn > HALF) return -firstHalf(turn - HALF);
  return firstHalf(turn);
}

/** Cosine of an angle given in whole thousandths of a degree; exactly 0, ±1/2 or ±1 where the true value is. */
export function cosDegThousandths(angle: number): number {
  return sinDegThousandths(within(angle) + QUARTER);
}

const QUARTER = 90_000;
const HALF = 180_000;
const FULL = 360_000;
const RADIANS_PER_THOUSANDTH = 3.141592653589793 / HALF;

function within(angle: number): number {
  if (!Number.isInteger(angle)) throw new RangeError(`angle ${angle} is not a whole number of thousandths of a degree`);
  const rest = angle % FULL;
  return rest < 0 ? rest + FULL : rest + 0;
}

function firstHalf(turn: number): number {
  const acute = turn > QUARTER ? HALF - turn : turn;
  if (acute === 0) return 0;
  if (acute === 30_000) return 0.5;
  if (acute === QUARTER) return 1;
  return acute <= 45_000 ? sin(acute * RADIANS_PER_THOUSANDTH) : cos((QUARTER - acute) * RADIANS_PER_THOUSANDTH);
}
