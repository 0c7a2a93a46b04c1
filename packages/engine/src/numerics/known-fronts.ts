import { elementsByFront, type Reuse } from "./elimination.ts";
import type { LowerHalf } from "./lower-half.ts";
import type { Front, FrontTree } from "./front-tree.ts";
import type { SparseElement, SparseFactor } from "./sparse-factor.ts";
import { factorise } from "./sparse-ldlt.ts";

/**
 * Worked fronts kept by what went into them: their elements and where those stand, and the same of every front below. Parts
 * that are alike along some stretch share the work and the room of it, whichever part it was met in. The result has the same
 * bits as a factorisation from nothing. The least recently used go first.
 */
export class KnownFronts {
  private readonly kept = new Map<number, Kept>();
  private readonly bySum = new Map<number, Kept[]>();
  private readonly matrices = new KnownMatrices();
  private readonly limitBytes: number;
  private bytes = 0;
  private lastId = 0;

  constructor(limitBytes: number) {
    this.limitBytes = limitBytes;
  }

  factorise(
    tree: FrontTree,
    elements: readonly SparseElement[],
    trusted: ReadonlySet<number> = new Set(),
  ): SparseFactor {
    const own = elementsByFront(tree, elements);
    const at = this.look(tree, own);
    const diagonal = new Float64Array(tree.equations);
    tree.fronts.forEach(({ rows }, n) => at[n]?.known && diagonal.set(at[n].known.diagonal, rows[0] ?? 0));
    const worked: Work[] = [];
    const reuse: Reuse = {
      shares: true,
      elementsOf: own,
      isClean: (front) => at[front]?.known !== undefined,
      panel: (front) => at[front]?.known?.panel ?? NOTHING,
      diagonal,
      remainder: (front) => at[front]?.known?.remainder ?? NOTHING,
      keep: (front, remainder, panel) => worked.push({ front, remainder, panel }),
    };
    const factor = factorise(tree, elements, trusted, reuse);
    // whether a small pivot is to be trusted is for the whole part to say: what it went into is not kept
    const doubtful = frontsAbove(tree, [...trusted, ...factor.loose]);
    for (const work of worked)
      if (!doubtful.has(work.front)) this.keep(tree.fronts[work.front], at[work.front], work, factor);
    return factor;
  }

  /** What is known of every front; the root, in which nothing is eliminated, is never kept. */
  private look(tree: FrontTree, own: readonly SparseElement[][]): Looked[] {
    const children: number[][] = tree.fronts.map(() => []);
    tree.fronts.forEach(({ parent }, n) => children[parent]?.push(n));
    const place = new Int32Array(tree.equations);
    this.matrices.forgetIfMany();
    const looked: Looked[] = [];
    tree.fronts.forEach((front, n) => {
      const below = children[n] ?? [];
      writeOwn(front, own[n] ?? [], place, this.matrices);
      for (const child of below) writeChild(tree.fronts[child], looked[child]?.id ?? 0, place);
      const sum = checksum(CONTENT.numbers, CONTENT.length);
      const known = front.pivots > 0 && below.every((child) => looked[child]?.known) ? this.find(sum) : undefined;
      const content = known?.content ?? CONTENT.numbers.slice(0, CONTENT.length);
      looked.push({ id: known?.id ?? ++this.lastId, sum, content, known });
    });
    return looked;
  }

  /** What has the content at hand. */
  private find(sum: number): Kept | undefined {
    const found = this.bySum.get(sum)?.find(({ content }) => sameIntegers(content, CONTENT.numbers, CONTENT.length));
    if (found === undefined) return undefined;
    this.kept.delete(found.id);
    this.kept.set(found.id, found);
    return found;
  }

  private keep(front: Front | undefined, at: Looked | undefined, work: Work, { diagonal }: SparseFactor): void {
    if (front === undefined || at === undefined || front.pivots === 0) return;
    const first = front.rows[0] ?? 0;
    const { panel, remainder } = work;
    const { id, sum, content } = at;
    const one: Kept = {
      id,
      sum,
      content,
      panel,
      remainder,
      diagonal: diagonal.slice(first, first + front.pivots),
    };
    this.kept.set(id, one);
    const alike = this.bySum.get(sum);
    if (alike === undefined) this.bySum.set(sum, [one]);
    else alike.push(one);
    this.bytes += bytesOf(one);
    for (const oldest of this.kept.values()) {
      if (this.bytes <= this.limitBytes) return;
      this.drop(oldest);
    }
  }

  private drop(one: Kept): void {
    this.kept.delete(one.id);
    this.bytes -= bytesOf(one);
    const left = this.bySum.get(one.sum)?.filter((other) => other !== one) ?? [];
    if (left.length > 0) this.bySum.set(one.sum, left);
    else this.bySum.delete(one.sum);
  }
}

function frontsAbove({ fronts, frontOf }: FrontTree, equations: readonly number[]): Set<number> {
  const above = new Set<number>();
  for (const equation of equations) {
    let front = frontOf[equation] ?? -1;
    for (; front >= 0 && !above.has(front); front = fronts[front]?.parent ?? -1) above.add(front);
  }
  return above;
}

interface Kept {
  readonly id: number;
  readonly sum: number;
  readonly content: Int32Array;
  readonly panel: Float64Array;
  readonly remainder: LowerHalf;
  readonly diagonal: Float64Array;
}

interface Looked {
  readonly id: number;
  readonly sum: number;
  readonly content: Int32Array;
  readonly known: Kept | undefined;
}

interface Work {
  readonly front: number;
  readonly remainder: LowerHalf;
  readonly panel: Float64Array;
}

const NOTHING = new Float64Array(0);

/** The content of the front at hand; written anew for every front. */
const CONTENT = { numbers: new Int32Array(1024), length: 0 };

function write(value: number): void {
  if (CONTENT.length === CONTENT.numbers.length) {
    const wider = new Int32Array(2 * CONTENT.length);
    wider.set(CONTENT.numbers);
    CONTENT.numbers = wider;
  }
  CONTENT.numbers[CONTENT.length++] = value;
}

/** Size, pivots, then of each element its matrix and the rows it stands on (−1 for held freedoms). */
function writeOwn(
  { rows, pivots }: Front,
  elements: readonly SparseElement[],
  place: Int32Array,
  matrices: KnownMatrices,
): void {
  for (let row = 0; row < rows.length; row++) place[rows[row] ?? 0] = row;
  CONTENT.length = 0;
  write(rows.length);
  write(pivots);
  write(elements.length);
  for (const { equations, matrix } of elements) {
    write(matrices.numberOf(matrix));
    for (let e = 0; e < equations.length; e++) {
      const equation = equations[e] ?? -1;
      write(equation < 0 ? -1 : (place[equation] ?? -1));
    }
  }
}

/** The front below and the rows on which it passes something on. */
function writeChild(child: Front | undefined, id: number, place: Int32Array): void {
  if (child === undefined) return;
  write(id);
  for (let row = child.pivots; row < child.rows.length; row++) write(place[child.rows[row] ?? 0] ?? -1);
}

function sameIntegers(a: Int32Array, b: Int32Array, length: number): boolean {
  if (a.length !== length) return false;
  for (let n = 0; n < length; n++) if (a[n] !== b[n]) return false;
  return true;
}

const NUMBER_BYTES = 8;
const INTEGER_BYTES = 4;

function bytesOf({ panel, remainder, content }: Kept): number {
  return NUMBER_BYTES * (panel.length + remainder.length) + INTEGER_BYTES * content.length;
}

/** FNV-1a over the numbers. */
function checksum(numbers: Int32Array, length: number): number {
  let sum = 0x811c9dc5;
  for (let n = 0; n < length; n++) sum = Math.imul(sum ^ (numbers[n] ?? 0), 0x01000193);
  return sum;
}

/** Numbers for matrices: equal ones, met in whatever part, have one number. */
class KnownMatrices {
  private readonly known = new Map<number, { readonly words: Int32Array; readonly id: number }[]>();
  /** Of the very same matrices; those of a kind of element are met in many parts. */
  private numbers = new WeakMap<Float64Array, number>();
  private count = 0;
  private lastId = 0;
  /** Alike elements often come one after the other. */
  private last: Float64Array | undefined;
  private lastNumber = 0;

  numberOf(matrix: Float64Array): number {
    if (matrix === this.last) return this.lastNumber;
    const known = this.numbers.get(matrix);
    const id = known ?? this.idOf(matrix);
    if (known === undefined) this.numbers.set(matrix, id);
    this.last = matrix;
    this.lastNumber = id;
    return id;
  }

  /** Numbers are never given twice, so that fronts of forgotten matrices are met no more. */
  forgetIfMany(): void {
    if (this.count <= MATRICES_KEPT) return;
    this.known.clear();
    this.numbers = new WeakMap();
    this.last = undefined;
    this.count = 0;
  }

  private idOf(matrix: Float64Array): number {
    const words = new Int32Array(matrix.buffer, matrix.byteOffset, 2 * matrix.length);
    const sum = checksum(words, Math.min(words.length, TOLD_BY));
    const alike = this.known.get(sum) ?? [];
    const found = alike.find((one) => sameIntegers(one.words, words, words.length));
    if (found !== undefined) return found.id;
    const made = { words: words.slice(), id: ++this.lastId };
    this.known.set(sum, [...alike, made]);
    this.count++;
    return made.id;
  }
}

const MATRICES_KEPT = 20_000;
/** Words of a matrix by which it is looked for: two rows of a member's tell nearly all apart. */
const TOLD_BY = 48;
