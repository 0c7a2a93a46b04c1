import { highWord } from "./float-bits.ts";

/**
 * Sine of an angle in radians, |x| ≤ 2²⁰·π/2; throws beyond that.
 * Source: fdlibm k_sin.c, k_cos.c, e_rem_pio2.c (Cody–Waite reduction in three parts), from memory.
 */
export function sin(x: number): number {
  const { quarter, rest, tail } = reduce(x);
  if (quarter === 0) return kernelSin(rest, tail);
  if (quarter === 1) return kernelCos(rest, tail);
  return quarter === 2 ? -kernelSin(rest, tail) : -kernelCos(rest, tail);
}

/** Cosine of an angle in radians, |x| ≤ 2²⁰·π/2; throws beyond that. Source as for `sin`. */
export function cos(x: number): number {
  const { quarter, rest, tail } = reduce(x);
  if (quarter === 0) return kernelCos(rest, tail);
  if (quarter === 1) return -kernelSin(rest, tail);
  return quarter === 2 ? -kernelCos(rest, tail) : kernelSin(rest, tail);
}

/** Tangent of an angle in radians, as the quotient of `sin` and `cos`; within about 2 units in the last place. */
export function tan(x: number): number {
  return sin(x) / cos(x);
}

interface Reduced {
  readonly quarter: 0 | 1 | 2 | 3;
  readonly rest: number;
  readonly tail: number;
}

const QUARTER_TURN = 1.5707963267948966;
const LARGEST_ANGLE = 1048576 * QUARTER_TURN; // the three parts below hold n·π/2 exactly up to n = 2^20
const QUARTERS_PER_RADIAN = 6.36619772367581382433e-1;
const PART_1 = 1.57079632673412561417; // first 33 bits of π/2
const PART_1_TAIL = 6.07710050650619224932e-11;
const PART_2 = 6.0771005063039659766e-11; // next 33 bits
const PART_2_TAIL = 2.02226624879595063154e-21;
const PART_3 = 2.0222662487111664558e-21; // third 33 bits
const PART_3_TAIL = 8.47842766036889956997e-32;

function reduce(x: number): Reduced {
  const size = Math.abs(x);
  if (size <= QUARTER_TURN / 2) return { quarter: 0, rest: x, tail: 0 };
  if (!(size <= LARGEST_ANGLE)) throw new RangeError(`angle ${x} rad is outside ±2^20·π/2`);
  const turns = Math.floor(size * QUARTERS_PER_RADIAN + 0.5);
  const [rest, tail] = subtractQuarters(size, turns);
  if (x >= 0) return { quarter: quarterOf(turns), rest, tail };
  return { quarter: quarterOf(-turns), rest: -rest, tail: -tail };
}

function quarterOf(turns: number): 0 | 1 | 2 | 3 {
  const quarter = ((turns % 4) + 4) % 4;
  return quarter === 0 ? 0 : quarter === 1 ? 1 : quarter === 2 ? 2 : 3;
}

function subtractQuarters(x: number, turns: number): [number, number] {
  let remainder = x - turns * PART_1;
  let small = turns * PART_1_TAIL;
  let rest = remainder - small;
  if (exponentDrop(x, rest) > 16) {
    const before = remainder;
    small = turns * PART_2;
    remainder = before - small;
    small = turns * PART_2_TAIL - (before - remainder - small);
    rest = remainder - small;
    if (exponentDrop(x, rest) > 49) {
      const second = remainder;
      small = turns * PART_3;
      remainder = second - small;
      small = turns * PART_3_TAIL - (second - remainder - small);
      rest = remainder - small;
    }
  }
  return [rest, remainder - rest - small];
}

function exponentDrop(from: number, to: number): number {
  return ((highWord(from) >> 20) & 0x7ff) - ((highWord(to) >> 20) & 0x7ff);
}

const S1 = -1.66666666666666324348e-1;
const S2 = 8.33333333332248946124e-3;
const S3 = -1.98412698298579493134e-4;
const S4 = 2.75573137070700676789e-6;
const S5 = -2.50507602534068634195e-8;
const S6 = 1.58969099521155010221e-10;

function kernelSin(x: number, tail: number): number {
  const z = x * x;
  const v = z * x;
  const r = S2 + z * (S3 + z * (S4 + z * (S5 + z * S6)));
  if (tail === 0) return x + v * (S1 + z * r);
  return x - (z * (0.5 * tail - v * r) - tail - v * S1);
}

const C1 = 4.16666666666666019037e-2;
const C2 = -1.38888888888741095749e-3;
const C3 = 2.48015872894767294178e-5;
const C4 = -2.75573143513906633035e-7;
const C5 = 2.0875723212981748279e-9;
const C6 = -1.13596475577881948265e-11;

function kernelCos(x: number, tail: number): number {
  const z = x * x;
  const r = z * (C1 + z * (C2 + z * (C3 + z * (C4 + z * (C5 + z * C6)))));
  const half = 0.5 * z;
  const w = 1 - half;
  return w + (1 - w - half + (z * r - x * tail));
}
