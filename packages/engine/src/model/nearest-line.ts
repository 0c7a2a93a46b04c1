/** Index of the line nearest to a value. */
export function nearestLine(lines: readonly number[], value: number): number {
  let best = 0;
  let least = Infinity;
  for (let n = 0; n < lines.length; n++) {
    const apart = Math.abs((lines[n] ?? NaN) - value);
    if (apart < least) {
      best = n;
      least = apart;
    }
  }
  return best;
}
