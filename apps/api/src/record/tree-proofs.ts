import { appendLeaf, nodeHash, treeHead } from "./tree-head.ts";

/** Tree head over the first `size` leaves. */
export const headOver = (leaves: readonly string[], size = leaves.length): string =>
  treeHead(leaves.slice(0, size).reduce<string[]>((frontier, leaf, at) => appendLeaf(frontier, at, leaf), []));

/**
 * Hashes that show leaf `index` (from 0) to be under the head over all leaves, RFC 9162 section 2.1.3.1.
 * Throws a RangeError when there is no such leaf.
 */
export function inclusionProof(leaves: readonly string[], index: number): string[] {
  if (index < 0 || index >= leaves.length) throw new RangeError(`no leaf ${index} among ${leaves.length}`);
  if (leaves.length === 1) return [];
  const k = splitOf(leaves.length);
  return index < k
    ? [...inclusionProof(leaves.slice(0, k), index), headOver(leaves.slice(k))]
    : [...inclusionProof(leaves.slice(k), index - k), headOver(leaves.slice(0, k))];
}

/** True when the proof leads from a leaf to the head over `size` leaves, RFC 9162 section 2.1.3.2. */
export function isIncluded(leaf: string, index: number, size: number, proof: readonly string[], head: string): boolean {
  if (index < 0 || index >= size) return false;
  let [fn, sn, root] = [index, size - 1, leaf];
  for (const hash of proof) {
    if (sn === 0) return false;
    if (fn % 2 === 1 || fn === sn) {
      root = nodeHash(hash, root);
      while (fn % 2 === 0 && fn !== 0) [fn, sn] = [fn / 2, Math.floor(sn / 2)];
    } else root = nodeHash(root, hash);
    [fn, sn] = [Math.floor(fn / 2), Math.floor(sn / 2)];
  }
  return sn === 0 && root === head;
}

/**
 * Hashes that show the head over the first `size` leaves to be a beginning of the head over all, RFC 9162 section
 * 2.1.4.1. Throws a RangeError unless 0 < size ≤ number of leaves.
 */
export function consistencyProof(leaves: readonly string[], size: number): string[] {
  if (size < 1 || size > leaves.length) throw new RangeError(`no head over ${size} of ${leaves.length} leaves`);
  return subProof(leaves, size, true);
}

function subProof(leaves: readonly string[], size: number, whole: boolean): string[] {
  if (size === leaves.length) return whole ? [] : [headOver(leaves)];
  const k = splitOf(leaves.length);
  return size <= k
    ? [...subProof(leaves.slice(0, k), size, whole), headOver(leaves.slice(k))]
    : [...subProof(leaves.slice(k), size - k, false), headOver(leaves.slice(0, k))];
}

/** The largest power of two below a number of leaves. */
function splitOf(leaves: number): number {
  let k = 1;
  while (k * 2 < leaves) k *= 2;
  return k;
}
