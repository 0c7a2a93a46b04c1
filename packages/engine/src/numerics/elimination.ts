import { lowerHalf, writeLowerHalf, type LowerHalf } from "./lower-half.ts";
import { eliminateFront } from "./front-kernel.ts";
import type { Front, FrontTree } from "./front-tree.ts";
import { Scratch } from "./scratch.ts";
import type { SparseElement } from "./sparse-factor.ts";

/** What an earlier factorisation of the same tree left behind, and where this one may take it over. */
export interface Reuse {
  /** Whether fronts are taken over into other factorisations one by one. */
  readonly shares: boolean;
  /** The elements taken up in each front, where they are known. */
  readonly elementsOf?: readonly SparseElement[][];
  /** Whether nothing in this front and below it has changed. */
  readonly isClean: (front: number) => boolean;
  readonly panel: (front: number) => Float64Array;
  readonly diagonal: Float64Array;
  readonly remainder: (front: number) => LowerHalf;
  /** Called with what each newly worked front passes on and its panel. */
  readonly keep: (front: number, remainder: LowerHalf, panel: Float64Array) => void;
}

/** The work of one factorisation, front by front. */
export class Elimination {
  private readonly tree: FrontTree;
  private readonly elementsOf: readonly SparseElement[][];
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
    this.elementsOf = reuse?.elementsOf ?? elementsByFront(tree, elements);
    this.children = tree.fronts.map(() => []);
    tree.fronts.forEach(({ parent }, index) => this.children[parent]?.push(index));
    this.place = new Int32Array(tree.equations);
    this.work = WORK.room(tree.fronts.reduce((most, front) => Math.max(most, front.rows.length * front.pivots), 0));
    this.stack = STACK.room(stackRoom(tree, this.children));
  }

  run(diagonal: Float64Array, settle: (pivot: number, equation: number) => number) {
    const panels: Float64Array[] = [];
    const { fronts } = this.tree;
    const room = this.panelRoom();
    fronts.forEach((front, index) => {
      if (this.reuse?.isClean(index)) {
        this.takeOver(this.reuse, front, index, diagonal);
        panels.push(this.reuse.panel(index));
        return;
      }
      const panel = room(front.rows.length * front.pivots);
      this.process(front, index, panel, diagonal, settle);
      panels.push(panel);
    });
    const last = fronts.at(-1)?.rows.length ?? 0; // the root passes on nothing: its remainder is what is retained
    return { panels, schur: mirrored(this.stack, last) };
  }

  /** One allocation for all panels; where some are taken over or may be, one for each, so that none keeps others alive. */
  private panelRoom(): (length: number) => Float64Array {
    const { fronts } = this.tree;
    if (this.reuse !== null && (this.reuse.shares || fronts.some((_, index) => this.reuse?.isClean(index))))
      return (length) => new Float64Array(length);
    const room = new Float64Array(fronts.reduce((sum, front) => sum + front.rows.length * front.pivots, 0));
    let used = 0;
    return (length) => room.subarray(used, (used += length));
  }

  /** A front below which nothing changed: its remainder is needed where a changed front asks for it. */
  private takeOver(reuse: Reuse, front: Front, index: number, diagonal: Float64Array): void {
    const first = front.rows[0] ?? 0;
    diagonal.set(reuse.diagonal.subarray(first, first + front.pivots), first);
    if (front.parent < 0 || reuse.isClean(front.parent)) return;
    writeLowerHalf(reuse.remainder(index), this.stack, this.top, front.rows.length - front.pivots);
    this.top += remainderSize(front);
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
    this.reuse?.keep(index, lowerHalf(this.stack, below, front.rows.length - front.pivots), panel);
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

/** The elements taken up in each front, in the order given. */
export function elementsByFront(tree: FrontTree, elements: readonly SparseElement[]): SparseElement[][] {
  const byFront = tree.fronts.map((): SparseElement[] => []);
  for (const element of elements) byFront[frontOf(tree, element)]?.push(element);
  return byFront;
}

function frontOf(tree: FrontTree, { equations }: SparseElement): number {
  let first = tree.fronts.length; // an element on held freedoms only belongs nowhere
  for (let e = 0; e < equations.length; e++) {
    const equation = equations[e] ?? -1;
    if (equation >= 0) first = Math.min(first, tree.frontOf[equation] ?? first);
  }
  return first;
}

/** One factorisation at a time: none starts within another. */
const WORK = new Scratch();
const STACK = new Scratch();

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

/** Places in the front of the rows being added; rewritten before every use. */
let places = new Int32Array(1024);

function placesOf(equations: Int32Array, place: Int32Array): Int32Array {
  if (equations.length > places.length) places = new Int32Array(2 * equations.length);
  for (let a = 0; a < equations.length; a++) {
    const equation = equations[a] ?? -1;
    places[a] = equation < 0 ? -1 : (place[equation] ?? 0);
  }
  return places;
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
  const at = placesOf(equations, place);
  for (let a = 0; a < size; a++) {
    const i = at[a] ?? -1;
    const inPanel = i * k;
    const inRemainder = (i - k) * m - k;
    for (let b = 0; b < size; b++) {
      const j = at[b] ?? -1;
      if (j < 0 || j > i) continue;
      const value = matrix[a * size + b] ?? 0;
      if (j < k) panel[inPanel + j] = (panel[inPanel + j] ?? 0) + value;
      else remainder[inRemainder + j] = (remainder[inRemainder + j] ?? 0) + value;
    }
  }
}

/** Rows come in ascending order, so that those of the panel come before those of the remainder. */
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
  const at = placesOf(rows, place);
  let split = 0;
  while (split < size && (at[split] ?? 0) < k) split++;
  for (let a = 0; a < size; a++) {
    const i = at[a] ?? 0;
    const source = from + a * size;
    const inPanel = i * k;
    const inRemainder = (i - k) * m - k;
    let b = 0;
    for (const end = Math.min(a + 1, split); b < end; b++) {
      const target = inPanel + (at[b] ?? 0);
      panel[target] = (panel[target] ?? 0) + (values[source + b] ?? 0);
    }
    for (; b <= a; b++) {
      const target = inRemainder + (at[b] ?? 0);
      remainder[target] = (remainder[target] ?? 0) + (values[source + b] ?? 0);
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
