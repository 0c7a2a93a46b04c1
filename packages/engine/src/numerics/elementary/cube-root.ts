import { fromWords, highWord } from "./float-bits.ts";

/**
 * Real cube root. Source: fdlibm s_cbrt.c for the first guess (exponent divided by three, integer trick);
 * then three Newton steps and a last one with the residual from exact splitting; from memory.
 */
export function cbrt(x: number): number {
  const size = Math.abs(x);
  if (size === 0 || !Number.isFinite(x)) return x;
  const subnormal = highWord(size) < 0x00100000;
  const root = subnormal ? normalRoot(size * TWO_TO_54) / TWO_TO_18 : normalRoot(size);
  return x < 0 ? -root : root;
}

const TWO_TO_54 = 18014398509481984;
const TWO_TO_18 = 262144;
const EXPONENT_OFFSET = 715094163; // (1023 − 1023/3 − 0.03306235651)·2^20

function normalRoot(size: number): number {
  let t = fromWords(Math.floor(highWord(size) / 3) + EXPONENT_OFFSET, 0);
  for (let step = 0; step < 4; step++) t -= (t - size / (t * t)) / 3;
  // Rounded to 26 bits t·t is exact, so the last step sees the true residual.
  const short = t * SPLIT - (t * SPLIT - t);
  const quotient = size / (short * short);
  return short + (short * (quotient - short)) / (short + short + quotient);
}

const SPLIT = 134217729; // 2^27 + 1 (Veltkamp)
