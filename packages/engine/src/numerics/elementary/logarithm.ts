import { fromWords, highWord, lowWord } from "./float-bits.ts";

/**
 * Natural logarithm; −∞ at 0, NaN below. Source: fdlibm e_log.c (x = 2ᵏ·(1 + f), polynomial in s = f/(2 + f)), from memory.
 */
export function log(x: number): number {
  if (Number.isNaN(x) || x < 0) return NaN;
  if (x === 0) return -Infinity;
  if (x === Infinity) return Infinity;
  const { k, f } = split(x);
  const s = f / (2 + f);
  const half = 0.5 * f * f;
  const r = polynomial(s * s);
  return k * LN2_HIGH - (half - (s * (half + r) + k * LN2_LOW) - f);
}

/** Logarithm to base ten, as log(x)/ln 10 with exact results at exact powers of ten up to 10²². */
export function log10(x: number): number {
  const near = log(x) / LN10;
  const whole = Math.floor(near + 0.5);
  return whole >= 0 && whole <= 22 && tenToThe(whole) === x ? whole : near;
}

const LN2_HIGH = 6.9314718036912381649e-1;
const LN2_LOW = 1.90821492927058770002e-10;
const LN10 = 2.302585092994046;
const TWO_TO_54 = 18014398509481984;
const SQRT_HALF_FRACTION = 0x95f64;

/** x = 2ᵏ·(1 + f) with √2/2 < 1 + f < √2. */
function split(x: number): { k: number; f: number } {
  let k = 0;
  let scaled = x;
  if (highWord(x) < 0x00100000) {
    k = -54;
    scaled = x * TWO_TO_54;
  }
  const high = highWord(scaled);
  const fraction = high & 0x000fffff;
  const carry = (fraction + SQRT_HALF_FRACTION) & 0x100000;
  const mantissa = fromWords(fraction | (carry ^ 0x3ff00000), lowWord(scaled));
  return { k: k + (high >> 20) - 1023 + (carry >> 20), f: mantissa - 1 };
}

function polynomial(z: number): number {
  const w = z * z;
  const even = w * (3.999999999940941908e-1 + w * (2.222219843214978396e-1 + w * 1.531383769920937332e-1));
  const odd =
    z *
    (6.66666666666673513e-1 +
      w * (2.857142874366239149e-1 + w * (1.818357216161805012e-1 + w * 1.479819860511658591e-1)));
  return even + odd;
}

function tenToThe(n: number): number {
  let power = 1;
  for (let i = 0; i < n; i++) power *= 10;
  return power;
}
