/** Index of the line nearest to a value. */
export function nearestLine(lines: readonly number[], value: number): number {
  return lines.reduce(
    (best, line, n) => (Math.abs(line - value) < Math.abs((lines[best] ?? NaN) - value) ? n : best),
    0,
  );
}
