import { Scratch } from "./scratch.ts";

export type ComplementarySolution =
  | { readonly solved: true; readonly z: Float64Array }
  /** No solution: along `direction` (≥ 0) nothing resists, M·d = 0 and q·d < 0. */
  | { readonly solved: false; readonly direction: Float64Array };

/**
 * Finds z ≥ 0 with w = M·z + q ≥ 0 and z·w = 0 for a symmetric positive semidefinite M (row-major, n × n), or the
 * direction that shows there is none. Each row is scaled by `scale`; what is below `zero` of it counts as nothing.
 *
 * Ends: Lemke's path with the lexicographic ratio rule visits no basis twice, and for a copositive-plus M (every positive
 * semidefinite M is) a ray means that no solution exists. Source: Cottle, Pang and Stone, The Linear Complementarity
 * Problem, §§4.4 and 4.9 (from memory).
 */
export function lemke(M: Float64Array, q: Float64Array, scale: Float64Array, zero: number): ComplementarySolution {
  const tableau = new Tableau(M, q, scale, zero);
  const first = tableau.mostNegative();
  if (first < 0) return { solved: true, z: new Float64Array(q.length) };
  let entering = tableau.pivot(first, tableau.artificial);
  for (;;) {
    const row = tableau.leavingRow(entering);
    if (row < 0) return { solved: false, direction: tableau.ray(entering) };
    const left = tableau.basis[row] ?? 0;
    entering = tableau.pivot(row, entering);
    if (left === tableau.artificial) return { solved: true, z: tableau.solution() };
  }
}

/** Many small problems are solved one after another. */
const TABLEAU = new Scratch();

/** Columns: w (0…n−1), z (n…2n−1), the artificial variable (2n), right-hand side (2n+1). Kept as I·w − M·z − e·z₀ = q. */
class Tableau {
  readonly basis: Int32Array;
  readonly artificial: number;
  private readonly n: number;
  private readonly width: number;
  private readonly zero: number;
  private readonly t: Float64Array;
  private readonly scale: Float64Array;

  constructor(M: Float64Array, q: Float64Array, scale: Float64Array, zero: number) {
    this.n = q.length;
    this.width = 2 * this.n + 2;
    this.artificial = 2 * this.n;
    this.zero = zero;
    this.scale = new Float64Array(this.n);
    this.basis = new Int32Array(this.n);
    this.t = TABLEAU.room(this.n * this.width).fill(0, 0, this.n * this.width);
    // symmetric scaling to a unit diagonal: forces and openings alike
    for (let i = 0; i < this.n; i++) this.scale[i] = 1 / Math.sqrt(scale[i] ?? 1);
    for (let i = 0; i < this.n; i++) {
      const si = this.scale[i] ?? 1;
      this.basis[i] = i;
      this.t[i * this.width + i] = 1;
      for (let j = 0; j < this.n; j++)
        this.set(i, this.n + j, -this.cleaned((M[i * this.n + j] ?? 0) * si * (this.scale[j] ?? 1)));
      this.set(i, this.artificial, -1);
      this.set(i, this.width - 1, (q[i] ?? 0) * si);
    }
  }

  mostNegative(): number {
    let row = -1;
    for (let i = 0; i < this.n; i++) {
      if (this.at(i, this.width - 1) < 0 && (row < 0 || this.at(i, this.width - 1) <= this.at(row, this.width - 1)))
        row = i; // last of equals: the lexicographic order
    }
    return row;
  }

  /** Row with the lexicographically least ratio of (right-hand side, w columns) to the entering column; −1 for a ray. */
  leavingRow(entering: number): number {
    let best = -1;
    for (let i = 0; i < this.n; i++) {
      if (this.at(i, entering) > this.zero && (best < 0 || this.precedes(i, best, entering))) best = i;
    }
    return best;
  }

  /** Brings `entering` into the basis at `row`; returns the complement of what left. */
  pivot(row: number, entering: number): number {
    const divisor = this.at(row, entering);
    for (let c = 0; c < this.width; c++) this.set(row, c, this.at(row, c) / divisor);
    for (let i = 0; i < this.n; i++) {
      const factor = i === row ? 0 : this.at(i, entering);
      if (factor === 0) continue;
      for (let c = 0; c < this.width; c++) this.set(i, c, this.at(i, c) - factor * this.at(row, c));
    }
    const left = this.basis[row] ?? 0;
    this.basis[row] = entering;
    return left < this.n ? left + this.n : left - this.n;
  }

  solution(): Float64Array {
    const z = new Float64Array(this.n);
    this.basis.forEach((variable, row) => {
      const index = variable - this.n;
      if (index >= 0 && index < this.n) z[index] = Math.max(0, this.at(row, this.width - 1)) * (this.scale[index] ?? 1);
    });
    return z;
  }

  ray(entering: number): Float64Array {
    const direction = new Float64Array(this.n);
    const put = (variable: number, value: number): void => {
      const index = variable - this.n;
      if (index >= 0 && index < this.n) direction[index] = Math.max(0, value) * (this.scale[index] ?? 1);
    };
    put(entering, 1);
    this.basis.forEach((variable, row) => put(variable, -this.at(row, entering)));
    return direction;
  }

  private precedes(i: number, other: number, entering: number): boolean {
    const a = this.at(i, entering);
    const b = this.at(other, entering);
    const first = this.at(i, this.width - 1) / a - this.at(other, this.width - 1) / b;
    if (first !== 0) return first < 0;
    for (let column = 0; column < this.n; column++) {
      const difference = this.at(i, column) / a - this.at(other, column) / b;
      if (difference !== 0) return difference < 0;
    }
    return false;
  }

  private cleaned(value: number): number {
    return Math.abs(value) <= this.zero ? 0 : value;
  }

  private at(row: number, column: number): number {
    return this.t[row * this.width + column] ?? 0;
  }

  private set(row: number, column: number, value: number): void {
    this.t[row * this.width + column] = value;
  }
}
