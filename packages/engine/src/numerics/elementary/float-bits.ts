const view = new DataView(new ArrayBuffer(8));

/** The upper 32 bits (sign, exponent, 20 fraction bits) of an IEEE 754 double, as a signed integer. */
export function highWord(x: number): number {
  view.setFloat64(0, x);
  return view.getInt32(0);
}

/** The lower 32 bits of an IEEE 754 double, unsigned. */
export function lowWord(x: number): number {
  view.setFloat64(0, x);
  return view.getUint32(4);
}

/** The double with these two halves. */
export function fromWords(high: number, low: number): number {
  view.setInt32(0, high);
  view.setUint32(4, low);
  return view.getFloat64(0);
}

/** x with its lower 32 bits cleared, so that products of two such numbers are exact. */
export function clearLowWord(x: number): number {
  return fromWords(highWord(x), 0);
}

/** x · 2ⁿ, correctly rounded once except for results that are subnormal. */
export function scaleByPowerOfTwo(x: number, n: number): number {
  let scaled = x;
  let rest = n;
  for (; rest > 1023; rest -= 1023) scaled *= LARGEST_POWER;
  for (; rest < -969; rest += 969) scaled *= SMALL_POWER;
  return scaled * fromWords((rest + 1023) << 20, 0);
}

const LARGEST_POWER = fromWords(2046 << 20, 0); // 2^1023
const SMALL_POWER = fromWords((1023 - 969) << 20, 0); // 2^-969: leaves 53 bits before the result is subnormal
