/**
 * Arctangent in radians, −π/2 to π/2.
 * Source: fdlibm s_atan.c (reduction to |x| < 7/16, odd polynomial), from memory.
 */
export function atan(x: number): number {
  if (Number.isNaN(x)) return x;
  const size = Math.abs(x);
  const value = size < 0.4375 ? size - size * series(size) : reduced(size);
  return x < 0 || Object.is(x, -0) ? -value : value;
}

/** The angle of the point (x, y) in radians, −π to π, exact on the axes. Source: fdlibm e_atan2.c, from memory. */
export function atan2(y: number, x: number): number {
  if (Number.isNaN(x) || Number.isNaN(y)) return NaN;
  const below = y < 0 || Object.is(y, -0);
  const left = x < 0 || Object.is(x, -0);
  const angle = firstQuarter(Math.abs(y), Math.abs(x), left);
  return below ? -angle : angle;
}

/** Arcsine in radians of −1 ≤ x ≤ 1 (NaN outside), as atan2(x, √(1 − x²)). */
export function asin(x: number): number {
  return atan2(x, Math.sqrt((1 - x) * (1 + x)));
}

/** Arccosine in radians of −1 ≤ x ≤ 1 (NaN outside), as atan2(√(1 − x²), x). */
export function acos(x: number): number {
  return atan2(Math.sqrt((1 - x) * (1 + x)), x);
}

const PI = 3.141592653589793;
const PI_TAIL = 1.2246467991473531772e-16;

const BREAKPOINTS = [
  { high: 4.63647609000806093515e-1, low: 2.26987774529616870924e-17 }, // atan 0.5
  { high: 7.85398163397448278999e-1, low: 3.06161699786838301793e-17 }, // atan 1
  { high: 9.82793723247329054082e-1, low: 1.39033110312309984516e-17 }, // atan 1.5
  { high: 1.570796326794896558, low: 6.12323399573676603587e-17 }, // atan ∞
] as const;

function reduced(size: number): number {
  if (size < 0.6875) return about(BREAKPOINTS[0], (2 * size - 1) / (2 + size));
  if (size < 1.1875) return about(BREAKPOINTS[1], (size - 1) / (size + 1));
  if (size < 2.4375) return about(BREAKPOINTS[2], (size - 1.5) / (1 + 1.5 * size));
  return about(BREAKPOINTS[3], -1 / size);
}

function about(at: { high: number; low: number }, t: number): number {
  return at.high - (t * series(t) - at.low - t);
}

const A = [
  3.33333333333329318027e-1, -1.99999999998764832476e-1, 1.42857142725034663711e-1, -1.1111110405462355788e-1,
  9.09088713343650656196e-2, -7.69187620504482999495e-2, 6.66107313738753120669e-2, -5.83357013379057348645e-2,
  4.97687799461593236017e-2, -3.6531572744216915527e-2, 1.62858201153657823623e-2,
] as const;

/** 1 − atan(t)/t, in even and odd halves as fdlibm sums it. */
function series(t: number): number {
  const z = t * t;
  const w = z * z;
  const odd = z * (A[0] + w * (A[2] + w * (A[4] + w * (A[6] + w * (A[8] + w * A[10])))));
  const even = w * (A[1] + w * (A[3] + w * (A[5] + w * (A[7] + w * A[9]))));
  return odd + even;
}

function firstQuarter(y: number, x: number, left: boolean): number {
  if (y === 0) return left ? PI : 0;
  if (x === 0) return PI / 2;
  if (y === Infinity) return x === Infinity ? (left ? (3 * PI) / 4 : PI / 4) : PI / 2;
  const angle = atan(y / x);
  return left ? PI - (angle - PI_TAIL) : angle;
}
