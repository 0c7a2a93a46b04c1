import type { Element } from "../elements/element.ts";
import { roundingBound } from "../numerics/tolerances.ts";

/** A movement of one node that nothing in the model resists even when every other node is held: six components, global. */
export interface IdleDirection {
  readonly node: number;
  readonly direction: Float64Array;
}

/**
 * Movements that are no mechanism because nothing is asked of them: the rotation of a joint in which every member is
 * pinned, and the movement of a point of a sheet out of its plane. Translations of other nodes are never idle.
 */
export function idleDirections(elements: readonly Element[], held: Uint8Array, sheetOnly: Uint8Array): IdleDirection[] {
  const blocks = nodeBlocks(elements, sheetOnly.length);
  const found: IdleDirection[] = [];
  for (let node = 0; node < sheetOnly.length; node++) {
    for (const direction of unresisted(
      blocks.subarray(node * 36, node * 36 + 36),
      held.subarray(node * 6, node * 6 + 6),
    )) {
      if (sheetOnly[node] || !movesPlace(direction)) found.push({ node, direction });
    }
  }
  return found;
}

/** The 6 × 6 diagonal block of the stiffness at every node. */
export function nodeBlocks(elements: readonly Element[], nodeCount: number): Float64Array {
  const blocks = new Float64Array(nodeCount * 36);
  for (const { freedoms, matrix } of elements) {
    const size = freedoms.length;
    for (let i = 0; i < size; i++) {
      const row = freedoms[i] ?? 0;
      const node = Math.floor(row / 6);
      const base = node * 36 + (row - node * 6) * 6 - node * 6;
      for (let j = 0; j < size; j++) {
        const column = freedoms[j] ?? 0;
        if (column < node * 6 || column >= node * 6 + 6) continue;
        blocks[base + column] = (blocks[base + column] ?? 0) + (matrix[i * size + j] ?? 0);
      }
    }
  }
  return blocks;
}

/** Entries of a node's block are sums over a dozen elements, each with tens of roundings behind it. */
const ROUNDING = roundingBound(512);

function movesPlace(direction: Float64Array): boolean {
  return direction[0] !== 0 || direction[1] !== 0 || direction[2] !== 0;
}

/** Null vectors of the block on its free rows, by elimination in order; a pivot within rounding of zero is skipped. */
function unresisted(block: Float64Array, held: Uint8Array): Float64Array[] {
  const a = block.slice();
  const kept: number[] = [];
  const skipped: number[] = [];
  for (let k = 0; k < 6; k++) {
    if (held[k]) continue;
    const pivot = a[k * 6 + k] ?? 0;
    if (pivot <= ROUNDING * (block[k * 6 + k] ?? 0)) {
      skipped.push(k);
      continue;
    }
    kept.push(k);
    for (let i = k + 1; i < 6; i++) {
      const factor = (a[i * 6 + k] ?? 0) / pivot;
      if (factor !== 0)
        for (let j = k + 1; j < 6; j++) a[i * 6 + j] = (a[i * 6 + j] ?? 0) - factor * (a[k * 6 + j] ?? 0);
    }
  }
  return skipped.map((s) => nullVector(a, kept, s));
}

/** Back substitution on the eliminated rows with one skipped freedom moved by 1. */
function nullVector(eliminated: Float64Array, kept: readonly number[], moved: number): Float64Array {
  const z = new Float64Array(6);
  z[moved] = 1;
  for (const k of kept.toReversed()) {
    if (k > moved) continue;
    let sum = 0;
    for (let j = k + 1; j <= moved; j++) sum += (eliminated[k * 6 + j] ?? 0) * (z[j] ?? 0);
    z[k] = -sum / (eliminated[k * 6 + k] ?? 1);
  }
  const size = Math.sqrt(z.reduce((sum, value) => sum + value * value, 0));
  return z.map((value) => (Math.abs(value) <= ROUNDING * size ? 0 : value / size));
}
