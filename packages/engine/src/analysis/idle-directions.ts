import type { Element } from "../elements/element.ts";
import { Scratch } from "../numerics/scratch.ts";
import { roundingBound } from "../numerics/tolerances.ts";

/** A movement of one node that nothing in the model resists even when every other node is held: six components, global. */
export interface IdleDirection {
  readonly node: number;
  readonly direction: Float64Array;
}

/**
 * Movements that are no mechanism because nothing is asked of them: the rotation of a joint in which every member is
 * pinned, and the movement of a point of a sheet out of its plane. Translations of other nodes are never idle, nor is
 * any of the `retained` freedoms, which the rest of the building holds.
 */
export function idleDirections(
  elements: readonly Element[],
  held: Uint8Array,
  sheetOnly: Uint8Array,
  retained: Uint8Array | null = null,
): IdleDirection[] {
  const left = withoutOwnHold(elements, sheetOnly.length);
  const blocks = nodeBlocks(elements, left);
  const fixed = retained === null ? held : held.map((flag, f) => flag | (retained[f] ?? 0));
  const found: IdleDirection[] = [];
  for (let node = 0; node < sheetOnly.length; node++) {
    if (!left[node]) continue;
    addUnresisted(blocks, node, fixed, sheetOnly[node] === 1, found);
  }
  return found;
}

/** 1 for each node that no single element holds all ways: whatever else acts on a node held so, nothing of it is idle. */
function withoutOwnHold(elements: readonly Element[], nodeCount: number): Uint8Array {
  const left = new Uint8Array(nodeCount).fill(1);
  for (const { freedoms, holdsNodes } of elements)
    if (holdsNodes === true) for (let f = 0; f < freedoms.length; f += 6) left[(freedoms[f] ?? 0) / 6] = 0;
  return left;
}

/** The 6 × 6 diagonal block of the stiffness at every node left, until asked again. An element has the freedoms of a node in a row. */
function nodeBlocks(elements: readonly Element[], left: Uint8Array): Float64Array {
  const blocks = BLOCKS.room(left.length * 36).fill(0, 0, left.length * 36);
  for (const { freedoms, matrix, holdsNodes } of elements) {
    if (holdsNodes === true) continue;
    const size = freedoms.length;
    for (let from = 0, to = 0; from < size; from = to) {
      const node = Math.floor((freedoms[from] ?? 0) / 6);
      const end = node * 6 + 6;
      while (to < size && (freedoms[to] ?? end) < end && (freedoms[to] ?? 0) >= node * 6) to++;
      if (!left[node]) continue;
      for (let i = from; i < to; i++) {
        const row = node * 36 + ((freedoms[i] ?? 0) - node * 6) * 6 - node * 6;
        for (let j = from; j < to; j++) {
          const at = row + (freedoms[j] ?? 0);
          blocks[at] = (blocks[at] ?? 0) + (matrix[i * size + j] ?? 0);
        }
      }
    }
  }
  return blocks;
}

const BLOCKS = new Scratch();

/** Entries of a node's block are sums over a dozen elements, each with tens of roundings behind it. */
const ROUNDING = roundingBound(512);

function movesPlace(direction: Float64Array): boolean {
  return direction[0] !== 0 || direction[1] !== 0 || direction[2] !== 0;
}

const scratch = new Float64Array(36);

/**
 * Null vectors of a node's block on its free rows, by elimination in order; a pivot within rounding of zero is skipped. Of a
 * node that is no sheet's alone, those that leave its place where it is.
 */
function addUnresisted(
  blocks: Float64Array,
  node: number,
  fixed: Uint8Array,
  ofSheet: boolean,
  found: IdleDirection[],
): void {
  const a = scratch;
  const block = node * 36;
  for (let n = 0; n < 36; n++) a[n] = blocks[block + n] ?? 0;
  for (let k = 0; k < 6; k++) {
    if (fixed[node * 6 + k]) {
      clearRow(a, k);
      continue;
    }
    const pivot = a[k * 6 + k] ?? 0;
    if (pivot <= ROUNDING * (blocks[block + k * 6 + k] ?? 0)) {
      const direction = nullVector(a, k);
      if (ofSheet || !movesPlace(direction)) found.push({ node, direction });
      clearRow(a, k);
      continue;
    }
    for (let i = k + 1; i < 6; i++) {
      const factor = (a[i * 6 + k] ?? 0) / pivot;
      if (factor !== 0)
        for (let j = k + 1; j < 6; j++) a[i * 6 + j] = (a[i * 6 + j] ?? 0) - factor * (a[k * 6 + j] ?? 0);
    }
  }
}

/** Takes a fixed or skipped freedom out; its zero diagonal marks it. */
function clearRow(a: Float64Array, k: number): void {
  for (let j = 0; j < 6; j++) {
    a[k * 6 + j] = 0;
    a[j * 6 + k] = 0;
  }
}

/** Back substitution on the eliminated rows with one skipped freedom moved by 1, which mostly moves by itself. */
function nullVector(eliminated: Float64Array, moved: number): Float64Array {
  if (movesAlone(eliminated, moved)) return ALONE[moved] ?? new Float64Array(6);
  const z = new Float64Array(6);
  z[moved] = 1;
  for (let k = moved - 1; k >= 0; k--) {
    const pivot = eliminated[k * 6 + k] ?? 0;
    if (pivot === 0) continue;
    let sum = 0;
    for (let j = k + 1; j <= moved; j++) sum += (eliminated[k * 6 + j] ?? 0) * (z[j] ?? 0);
    z[k] = -sum / pivot;
  }
  const size = Math.sqrt(z.reduce((sum, value) => sum + value * value, 0));
  return z.map((value) => (Math.abs(value) <= ROUNDING * size ? 0 : value / size));
}

function movesAlone(eliminated: Float64Array, moved: number): boolean {
  for (let k = 0; k < moved; k++) if (eliminated[k * 6 + moved] !== 0) return false;
  return true;
}

/** One freedom moved by 1; there are a thousand of these in a container. */
const ALONE = Array.from({ length: 6 }, (_, c) => Float64Array.from({ length: 6 }, (__, n) => (n === c ? 1 : 0)));
