import { eliminateFront } from "./front-kernel.ts";
import type { Front, FrontTree } from "./front-tree.ts";
import type { SparseElement } from "./sparse-factor.ts";

/** What an earlier factorisation of the same tree left behind, and where this one may take it over. */
export interface Reuse {
  /** Whether nothing in this front and below it has changed. */
  readonly isClean: (front: number) => boolean;
  readonly panel: (front: number) => Float64Array;
  readonly diagonal: Float64Array;
  readonly remainder: (front: number) => Float64Array;
  /** Called with what each newly worked front passes on, which is only on loan. */
  readonly keep: (front: number, remainder: Float64Array) => void;
}

/** The work of one factorisation, front by front. */
export class Elimination {
  private readonly tree: FrontTree;
  private readonly elementsOf: SparseElement[][];
  private readonly children: number[][];
  private readonly place: Int32Array; // equation → row of the current front
  private readonly work: Float64Array;
  /** Remainders waiting for their parents: in this order of fronts the newest are always wanted first. */
  private readonly stack: Float64Array;
  private top = 0;
  private readonly reuse: Reuse | null;

  constructor(tree: FrontTree, elements: readonly SparseElement[], reuse: Reuse | null) {
    this.tree = tree;
    this.reuse = reuse;
    this.elementsOf = tree.fronts.map(() => []);
    this.children = tree.fronts.map(() => []);
    tree.fronts.forEach(({ parent }, index) => this.children[parent]?.push(index));
    this.place = new Int32Array(tree.equations);
    this.work = new Float64Array(
      tree.fronts.reduce((most, front) => Math.max(most, front.rows.length * front.pivots), 0),
    );
    this.stack = new Float64Array(stackRoom(tree, this.children));
    for (const element of elements) this.elementsOf[this.frontOf(element)]?.push(element);
  }

  run(diagonal: Float64Array, settle: (pivot: number, equation: number) => number) {
    const panels: Float64Array[] = [];
    const { fronts } = this.tree;
    const room = new Float64Array(fronts.reduce((sum, front) => sum + front.rows.length * front.pivots, 0));
    let used = 0;
    fronts.forEach((front, index) => {
      const panel = room.subarray(used, (used += front.rows.length * front.pivots));
      if (this.reuse?.isClean(index)) this.copy(this.reuse, front, index, panel, diagonal);
      else this.process(front, index, panel, diagonal, settle);
      panels.push(panel);
    });
    const last = fronts.at(-1)?.rows.length ?? 0; // the root passes on nothing: its remainder is what is retained
    return { panels, schur: mirrored(this.stack, last) };
  }

  /** A front below which nothing changed: its rows as they were, and its remainder where a changed front asks for it. */
  private copy(reuse: Reuse, front: Front, index: number, panel: Float64Array, diagonal: Float64Array): void {
    const first = front.rows[0] ?? 0;
    panel.set(reuse.panel(index));
    diagonal.set(reuse.diagonal.subarray(first, first + front.pivots), first);
    if (front.parent < 0 || reuse.isClean(front.parent)) return;
    const remainder = reuse.remainder(index);
    this.stack.set(remainder, this.top);
    this.top += remainder.length;
  }

  private process(
    front: Front,
    index: number,
    panel: Float64Array,
    diagonal: Float64Array,
    settle: (pivot: number, equation: number) => number,
  ): void {
    const size = remainderSize(front);
    const remainder = this.stack.subarray(this.top, this.top + size).fill(0);
    const below = this.assemble(front, index, panel, remainder);
    this.eliminate(front, panel, remainder, diagonal, settle);
    this.stack.copyWithin(below, this.top, this.top + size);
    this.top = below + size;
    this.reuse?.keep(index, this.stack.subarray(below, this.top));
  }

  private frontOf({ equations }: SparseElement): number {
    let first = this.tree.fronts.length; // an element on held freedoms only belongs nowhere
    for (let e = 0; e < equations.length; e++) {
      const equation = equations[e] ?? -1;
      if (equation >= 0) first = Math.min(first, this.tree.frontOf[equation] ?? first);
    }
    return first;
  }

  /** Returns where the stack begins once the children have been taken in. */
  private assemble(front: Front, index: number, panel: Float64Array, remainder: Float64Array): number {
    const { place } = this;
    for (let row = 0; row < front.rows.length; row++) place[front.rows[row] ?? 0] = row;
    for (const element of this.elementsOf[index] ?? []) addElement(element, place, front, panel, remainder);
    let below = this.top;
    for (const child of (this.children[index] ?? []).toReversed()) {
      const taken = this.tree.fronts[child];
      if (taken === undefined) continue;
      below -= remainderSize(taken);
      addRemainder(taken.rows.subarray(taken.pivots), this.stack, below, place, front, panel, remainder);
    }
    return below;
  }

  private eliminate(
    front: Front,
    panel: Float64Array,
    remainder: Float64Array,
    diagonal: Float64Array,
    settle: (pivot: number, equation: number) => number,
  ): void {
    if (front.pivots === 0) return;
    const first = front.rows[0] ?? 0;
    const own = diagonal.subarray(first, first + front.pivots);
    eliminateFront(front.rows.length, front.pivots, panel, this.work, remainder, own, (pivot, i) =>
      settle(pivot, first + i),
    );
  }
}

/** What a front passes on; nothing without a parent, except from the root, which comes last. */
function remainderSize({ rows, pivots }: Front): number {
  return (rows.length - pivots) * (rows.length - pivots);
}

function stackRoom({ fronts }: FrontTree, children: readonly (readonly number[])[]): number {
  let top = 0;
  let most = 0;
  fronts.forEach((front, index) => {
    most = Math.max(most, top + remainderSize(front));
    for (const child of children[index] ?? []) {
      const taken = fronts[child];
      if (taken !== undefined) top -= remainderSize(taken);
    }
    top += remainderSize(front);
  });
  return most;
}

function addElement(
  { equations, matrix }: SparseElement,
  place: Int32Array,
  front: Front,
  panel: Float64Array,
  remainder: Float64Array,
): void {
  const size = equations.length;
  const k = front.pivots;
  const m = front.rows.length - k;
  for (let a = 0; a < size; a++) {
    const equation = equations[a] ?? -1;
    if (equation < 0) continue;
    const i = place[equation] ?? 0;
    for (let b = 0; b < size; b++) {
      const other = equations[b] ?? -1;
      if (other < 0) continue;
      const j = place[other] ?? 0;
      if (j > i) continue;
      const value = matrix[a * size + b] ?? 0;
      if (j < k) panel[i * k + j] = (panel[i * k + j] ?? 0) + value;
      else remainder[(i - k) * m + j - k] = (remainder[(i - k) * m + j - k] ?? 0) + value;
    }
  }
}

function addRemainder(
  rows: Int32Array,
  values: Float64Array,
  from: number,
  place: Int32Array,
  front: Front,
  panel: Float64Array,
  remainder: Float64Array,
): void {
  const size = rows.length;
  const k = front.pivots;
  const m = front.rows.length - k;
  for (let a = 0; a < size; a++) {
    const i = place[rows[a] ?? 0] ?? 0;
    const source = from + a * size;
    for (let b = 0; b <= a; b++) {
      const j = place[rows[b] ?? 0] ?? 0;
      const value = values[source + b] ?? 0;
      if (j < k) panel[i * k + j] = (panel[i * k + j] ?? 0) + value;
      else remainder[(i - k) * m + j - k] = (remainder[(i - k) * m + j - k] ?? 0) + value;
    }
  }
}

function mirrored(lower: Float64Array, size: number): Float64Array<ArrayBuffer> {
  const full = new Float64Array(size * size);
  for (let i = 0; i < size; i++) {
    for (let j = 0; j <= i; j++) {
      const value = lower[i * size + j] ?? 0;
      full[i * size + j] = value;
      full[j * size + i] = value;
    }
  }
  return full;
}
