/**
 * √(x² + y² + z²) without overflow or underflow, by scaling with the largest part; exact when only one part is not zero.
 */
export function hypot(x: number, y: number, z = 0): number {
  const a = Math.abs(x);
  const b = Math.abs(y);
  const c = Math.abs(z);
  const largest = Math.max(a, b, c);
  if (largest === 0 || largest === Infinity || Number.isNaN(largest)) return largest;
  if (largest > SAFE_LOW && largest < SAFE_HIGH) return Math.sqrt(a * a + b * b + c * c);
  const scale = largest > 1 ? SHRINK : GROW;
  const [u, v, w] = [a * scale, b * scale, c * scale];
  return Math.sqrt(u * u + v * v + w * w) / scale;
}

const SAFE_LOW = 1e-140; // squares stay far above the subnormal range
const SAFE_HIGH = 1e150; // squares stay far below overflow
const GROW = 4.149515568880993e180; // 2^600
const SHRINK = 2.409919865102884e-181; // 2^-600
