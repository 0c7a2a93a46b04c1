import { clearLowWord, fromWords, highWord, lowWord, scaleByPowerOfTwo } from "./float-bits.ts";

/**
 * x to the power y, with the special values of ECMA-262 Number::exponentiate.
 * Source: fdlibm e_pow.c (log₂ x in two parts, exact leading products), from memory.
 */
export function pow(x: number, y: number): number {
  if (y === 0) return 1;
  if (Number.isNaN(x) || Number.isNaN(y)) return NaN;
  if (Math.abs(y) === Infinity) return atInfinity(Math.abs(x), y);
  const negative = x < 0 || Object.is(x, -0);
  if (negative && x !== 0 && x !== -Infinity && !Number.isInteger(y)) return NaN;
  const size = Math.abs(x);
  const value = size === 0 || size === Infinity ? ofExtreme(size, y) : ofFinite(size, y);
  return negative && isOdd(y) ? -value : value;
}

function atInfinity(size: number, y: number): number {
  if (size === 1) return NaN;
  return size > 1 === y > 0 ? Infinity : 0;
}

function ofExtreme(size: number, y: number): number {
  return (size === 0) === y > 0 ? 0 : Infinity;
}

function isOdd(y: number): boolean {
  return Number.isInteger(y) && Math.abs(y) % 2 === 1;
}

const LARGEST_USEFUL = 1.8446744073709552e19; // 2^64: beyond, the result is 0, 1 or ∞

function ofFinite(size: number, y: number): number {
  if (size === 1) return 1;
  if (y === 1) return size;
  if (y === 2) return size * size;
  if (y === -1) return 1 / size;
  if (y === 0.5) return Math.sqrt(size);
  if (Math.abs(y) > LARGEST_USEFUL) return size > 1 === y > 0 ? Infinity : 0;
  const [high, low] = log2InTwoParts(size);
  const yHigh = clearLowWord(y);
  const small = (y - yHigh) * high + y * low;
  return powerOfTwo(yHigh * high, small);
}

const L1 = 5.99999999999994648725e-1;
const L2 = 4.28571428578550184252e-1;
const L3 = 3.33333329818377432918e-1;
const L4 = 2.72728123808534006489e-1;
const L5 = 2.30660745775561754067e-1;
const L6 = 2.06975017800338417784e-1;
const CP = 9.61796693925975554329e-1; // 2/(3 ln 2)
const CP_HIGH = 9.61796700954437255859e-1;
const CP_LOW = -7.02846165095275826516e-9;
const LOG2_1_5_HIGH = 5.84962487220764160156e-1;
const LOG2_1_5_LOW = 1.35003920212974897128e-8;

/** log₂ x as a part with its low word clear and the rest. */
function log2InTwoParts(x: number): [number, number] {
  const { exponent, mantissa, aboveOne } = splitForLog(x);
  const base = aboveOne ? 1.5 : 1;
  const u = mantissa - base;
  const v = 1 / (mantissa + base);
  const s = u * v;
  const sHigh = clearLowWord(s);
  const halfHigh = fromWords(((highWord(mantissa) >> 1) | 0x20000000) + 0x00080000 + (aboveOne ? 1 << 18 : 0), 0);
  const halfLow = mantissa - (halfHigh - base);
  const sLow = v * (u - sHigh * halfHigh - sHigh * halfLow);
  const s2 = s * s;
  const r = s2 * s2 * (L1 + s2 * (L2 + s2 * (L3 + s2 * (L4 + s2 * (L5 + s2 * L6))))) + sLow * (sHigh + s);
  const square = sHigh * sHigh;
  const tHigh = clearLowWord(3 + square + r);
  const tLow = r - (tHigh - 3 - square);
  const productHigh = sHigh * tHigh;
  const productLow = sLow * tHigh + tLow * s;
  const pHigh = clearLowWord(productHigh + productLow);
  const pLow = productLow - (pHigh - productHigh);
  const zHigh = CP_HIGH * pHigh;
  const offsetHigh = aboveOne ? LOG2_1_5_HIGH : 0;
  const zLow = CP_LOW * pHigh + pLow * CP + (aboveOne ? LOG2_1_5_LOW : 0);
  const high = clearLowWord(zHigh + zLow + offsetHigh + exponent);
  return [high, zLow - (high - exponent - offsetHigh - zHigh)];
}

const TWO_TO_53 = 9007199254740992;

/** x = 2ᵉ·mantissa, the mantissa within a factor √(3/2) of 1 (or of 1.5 when `aboveOne`). */
function splitForLog(x: number): { exponent: number; mantissa: number; aboveOne: boolean } {
  const subnormal = highWord(x) < 0x00100000;
  const scaled = subnormal ? x * TWO_TO_53 : x;
  const high = highWord(scaled);
  const fraction = high & 0x000fffff;
  const exponent = (high >> 20) - 1023 - (subnormal ? 53 : 0);
  if (fraction <= 0x3988e)
    return { exponent, mantissa: fromWords(fraction | 0x3ff00000, lowWord(scaled)), aboveOne: false };
  if (fraction < 0xbb67a)
    return { exponent, mantissa: fromWords(fraction | 0x3ff00000, lowWord(scaled)), aboveOne: true };
  const mantissa = fromWords((fraction | 0x3ff00000) - 0x00100000, lowWord(scaled));
  return { exponent: exponent + 1, mantissa, aboveOne: false };
}

const LN2 = 6.93147180559945286227e-1;
const LN2_HIGH = 6.93147182464599609375e-1;
const LN2_LOW = -1.90465429995776804525e-9;

/** 2 to the power high + low. */
function powerOfTwo(high: number, low: number): number {
  const sum = high + low;
  if (sum >= 1025) return Infinity;
  if (sum < -1076) return 0;
  const n = Math.floor(sum + 0.5);
  const rest = high - n;
  const t = clearLowWord(low + rest);
  const u = t * LN2_HIGH;
  const v = (low - (t - rest)) * LN2 + t * LN2_LOW;
  const z = u + v;
  const w = v - (z - u);
  const z2 = z * z;
  const t1 = z - z2 * (P1 + z2 * (P2 + z2 * (P3 + z2 * (P4 + z2 * P5))));
  const r = (z * t1) / (t1 - 2) - (w + z * w);
  return scaleByPowerOfTwo(1 - (r - z), n);
}

const P1 = 1.66666666666666019037e-1;
const P2 = -2.77777777770155933842e-3;
const P3 = 6.61375632143793436117e-5;
const P4 = -1.6533902205465251539e-6;
const P5 = 4.13813679705723846039e-8;
