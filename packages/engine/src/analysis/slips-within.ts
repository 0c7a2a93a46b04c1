type Held = {
  /** What a slip of each direction adds to the force in each, N/mm; symmetric, full, row-major, x and y of one bearing after the other. */
  readonly stiffness: Float64Array;
  /** N, with these slips. */
  readonly forces: Float64Array;
  /** mm. */
  readonly slips: Float64Array;
  /** What friction holds under each bearing, N. */
  readonly most: Float64Array;
};

/**
 * Slips under which no bearing holds more than friction: where it slips it holds as much, against the slip (Coulomb, for one
 * step from no slip). Given what friction holds they are the least of a convex sum, ½ sᵀ S s + sᵀ f₀ + Σ most·|s|, found bearing
 * by bearing, each put where it is best for the slips of the others. Null where it does not end, as where friction is less than what
 * pushes.
 */
export function slipsWithin({ stiffness, forces, slips, most }: Held): Float64Array | null {
  const size = forces.length;
  const [now, at] = [forces.slice(), slips.slice()];
  for (let round = 0; round < MOST_ROUNDS; round++) {
    let left = 0;
    for (let n = 0; n < most.length; n++) {
      const [x, y] = [2 * n, 2 * n + 1];
      const own = stiffest(stiffness, size, x, y);
      // without its own slip
      const [fx, fy] = [(now[x] ?? 0) - own * (at[x] ?? 0), (now[y] ?? 0) - own * (at[y] ?? 0)];
      const asked = Math.sqrt(fx * fx + fy * fy);
      const limit = most[n] ?? 0;
      const share = asked > limit ? (1 - limit / asked) / own : 0;
      const [dx, dy] = [-fx * share - (at[x] ?? 0), -fy * share - (at[y] ?? 0)];
      if (dx === 0 && dy === 0) continue;
      at[x] = (at[x] ?? 0) + dx;
      at[y] = (at[y] ?? 0) + dy;
      for (let m = 0; m < size; m++)
        now[m] = (now[m] ?? 0) + (stiffness[x * size + m] ?? 0) * dx + (stiffness[y * size + m] ?? 0) * dy;
      left = Math.max(left, (own * Math.max(Math.abs(dx), Math.abs(dy))) / (limit + LEAST_N));
    }
    if (left < NEAR) return at;
  }
  return null;
}

/** Sweeps over all bearings; chosen. */
const MOST_ROUNDS = 400;
/** A sweep that moves no force by more than this share of what friction holds, or of 10 N where nothing presses, is the last; chosen. */
const NEAR = 0.01;
const LEAST_N = 10;

/** Not less than the stiffest way in which the two directions of a bearing resist a slip. */
function stiffest(stiffness: Float64Array, size: number, x: number, y: number): number {
  const across = Math.abs(stiffness[x * size + y] ?? 0);
  return Math.max(stiffness[x * size + x] ?? 0, stiffness[y * size + y] ?? 0) + across;
}
