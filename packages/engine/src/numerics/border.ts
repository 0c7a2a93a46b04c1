import type { Front } from "./front-tree.ts";
import { Scratch } from "./scratch.ts";
import { forwardFront } from "./solve-kernel.ts";
import type { SparseFactor } from "./sparse-factor.ts";

/** What a further unknown has to do with the equations of a factorised matrix: its column, as far as it is not zero. */
export interface BorderColumn {
  readonly equations: readonly number[];
  readonly values: readonly number[];
}

/** L⁻¹·w of a border column w: only on the fronts it reaches, one after another. */
export interface ReducedColumn {
  /** Ascending; the equations eliminated in each follow from `firsts` on. */
  readonly fronts: Int32Array;
  readonly firsts: Int32Array;
  /** Where the numbers of each front begin, and, last, where they end. */
  readonly starts: Int32Array;
  readonly values: Float64Array;
  /** The numbers over the square roots of their pivots, D^(−½)·L⁻¹·w. */
  readonly scaled: Float64Array;
}

/** Forward elimination of border columns; each has the bits it has by itself. */
export function reduceColumns(factor: SparseFactor, columns: readonly BorderColumn[]): ReducedColumn[] {
  const reduced: ReducedColumn[] = [];
  for (let from = 0; from < columns.length; from += AT_ONCE)
    reduced.push(...reduceSome(factor, columns.slice(from, from + AT_ONCE)));
  return reduced;
}

/** wᵀ·K⁻¹·v of two border columns, the same bits in either order. */
export function product(w: ReducedColumn, v: ReducedColumn): number {
  let sum = 0;
  let i = w.fronts.length - 1;
  let j = v.fronts.length - 1;
  while (i >= 0 && j >= 0) {
    const one = w.fronts[i] ?? 0;
    const other = v.fronts[j] ?? 0;
    if (one > other) i--;
    else if (other > one) j--;
    else {
      const end = w.starts[i + 1] ?? 0;
      for (; i >= 0 && j >= 0 && w.fronts[i] === v.fronts[j]; i--) j--;
      sum += productOf(w.scaled, v.scaled, w.starts[i + 1] ?? 0, end, v.starts[j + 1] ?? 0);
    }
  }
  return sum;
}

/**
 * Fronts that both reach stand in a row in either; four sums that need not wait for each other, each begun by itself: sums
 * taken out of an array are boxed anew at every step (measured: half of what a solution allocates).
 */
function productOf(a: Float64Array, b: Float64Array, from: number, end: number, other: number): number {
  let s0 = 0;
  let s1 = 0;
  let s2 = 0;
  let s3 = 0;
  let p = from;
  let q = other;
  for (; p + 3 < end; p += 4, q += 4) {
    s0 += (a[p] ?? 0) * (b[q] ?? 0);
    s1 += (a[p + 1] ?? 0) * (b[q + 1] ?? 0);
    s2 += (a[p + 2] ?? 0) * (b[q + 2] ?? 0);
    s3 += (a[p + 3] ?? 0) * (b[q + 3] ?? 0);
  }
  for (; p < end; p++, q++) s0 += (a[p] ?? 0) * (b[q] ?? 0);
  return s0 + s1 + (s2 + s3);
}

/** So many columns stay near the processor while a front works on them (measured). */
const AT_ONCE = 32;
const COLUMNS = new Scratch();
const ROWS = new Scratch();

/** Column by column: x[column·equations + equation]. */
function reduceSome(factor: SparseFactor, columns: readonly BorderColumn[]): ReducedColumn[] {
  const { equations, fronts } = factor.tree;
  const x = COLUMNS.room(equations * columns.length).fill(0, 0, equations * columns.length);
  columns.forEach((column, c) => {
    column.equations.forEach((equation, n) => {
      const at = c * equations + equation;
      x[at] = (x[at] ?? 0) + (column.values[n] ?? 0);
    });
  });
  const reaching = frontsReached(factor, columns);
  const columnsAt: number[][] = fronts.map(() => []);
  reaching.forEach((reached, c) => reached.forEach((front) => columnsAt[front]?.push(c)));
  fronts.forEach((front, index) => {
    const at = columnsAt[index] ?? [];
    if (at.length > 0) forwardOne(front, factor.panels[index] ?? NOTHING, x, equations, at);
  });
  return reaching.map((reached, c) => onFronts(factor, reached, x.subarray(c * equations)));
}

const NOTHING = new Float64Array(0);

/** For each column the fronts from those of its equations up, ascending, so far as they eliminate anything. */
function frontsReached({ tree }: SparseFactor, columns: readonly BorderColumn[]): Int32Array[] {
  return columns.map(({ equations }) => {
    const reached = new Set<number>();
    for (const equation of equations) {
      let front = tree.frontOf[equation] ?? -1;
      for (; front >= 0 && !reached.has(front); front = tree.fronts[front]?.parent ?? -1) reached.add(front);
    }
    return Int32Array.from([...reached].filter((front) => (tree.fronts[front]?.pivots ?? 0) > 0)).sort();
  });
}

function forwardOne(
  { rows, pivots }: Front,
  panel: Float64Array,
  x: Float64Array,
  equations: number,
  columns: readonly number[],
): void {
  const count = columns.length;
  const y = ROWS.room(rows.length * count);
  columns.forEach((c, r) => {
    for (let i = 0; i < rows.length; i++) y[i * count + r] = x[c * equations + (rows[i] ?? 0)] ?? 0;
  });
  forwardFront(rows.length, pivots, panel, y, count);
  columns.forEach((c, r) => {
    for (let i = 0; i < rows.length; i++) x[c * equations + (rows[i] ?? 0)] = y[i * count + r] ?? 0;
  });
}

function onFronts({ tree, diagonal }: SparseFactor, fronts: Int32Array, x: Float64Array): ReducedColumn {
  const firsts = fronts.map((front) => tree.fronts[front]?.rows[0] ?? 0);
  const starts = new Int32Array(fronts.length + 1);
  fronts.forEach((front, n) => (starts[n + 1] = (starts[n] ?? 0) + (tree.fronts[front]?.pivots ?? 0)));
  const values = new Float64Array(starts[fronts.length] ?? 0);
  const scaled = new Float64Array(values.length);
  for (let n = 0; n < fronts.length; n++) {
    const end = starts[n + 1] ?? 0;
    for (let v = starts[n] ?? 0, e = firsts[n] ?? 0; v < end; v++, e++) {
      values[v] = x[e] ?? 0;
      scaled[v] = (x[e] ?? 0) / Math.sqrt(diagonal[e] ?? 1);
    }
  }
  return { fronts, firsts, starts, values, scaled };
}
