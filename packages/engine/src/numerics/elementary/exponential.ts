import { scaleByPowerOfTwo } from "./float-bits.ts";

/**
 * e to the power x. Source: fdlibm e_exp.c (x = n·ln 2 + r, Remez rational on r), from memory.
 */
export function exp(x: number): number {
  if (Number.isNaN(x)) return x;
  if (x > OVERFLOW) return Infinity;
  if (x < UNDERFLOW) return 0;
  if (Math.abs(x) <= HALF_LN2) return reducedExp(x, 0, 0);
  const n = Math.trunc(x * PER_LN2 + (x < 0 ? -0.5 : 0.5));
  return reducedExp(x - n * LN2_HIGH, n * LN2_LOW, n);
}

/** Hyperbolic tangent, by `exp`; within 4 units in the last place. */
export function tanh(x: number): number {
  const size = Math.abs(x);
  if (size < 0.25) return x * tanhRatio(x * x);
  const grown = exp(2 * size);
  const value = grown === Infinity ? 1 : 1 - 2 / (grown + 1);
  return x < 0 ? -value : value;
}

const OVERFLOW = 7.09782712893383973096e2;
const UNDERFLOW = -7.4513321910194110842e2;
const LN2_HIGH = 6.9314718036912381649e-1;
const LN2_LOW = 1.90821492927058770002e-10;
const PER_LN2 = 1.442695040888963387;
const HALF_LN2 = 0.34657359027997264;

const P1 = 1.66666666666666019037e-1;
const P2 = -2.77777777770155933842e-3;
const P3 = 6.61375632143793436117e-5;
const P4 = -1.6533902205465251539e-6;
const P5 = 4.13813679705723846039e-8;

function reducedExp(high: number, low: number, n: number): number {
  const x = high - low;
  const t = x * x;
  const c = x - t * (P1 + t * (P2 + t * (P3 + t * (P4 + t * P5))));
  if (n === 0) return 1 - ((x * c) / (c - 2) - x);
  return scaleByPowerOfTwo(1 - (low - (x * c) / (2 - c) - high), n);
}

/** tanh(x)/x for x² = z ≤ 1/16 by the continued fraction 1/(1 + z/(3 + z/(5 + …))) (Lambert). */
function tanhRatio(z: number): number {
  let tail = 17;
  for (let odd = 15; odd >= 1; odd -= 2) tail = odd + z / tail;
  return 1 / tail;
}
