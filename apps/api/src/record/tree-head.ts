import { createHash } from "node:crypto";

/** Hash of one leaf, RFC 9162 section 2.1.1: SHA-256 over 0x00 and the leaf's bytes. Hexadecimal. */
export const leafHash = (bytes: Uint8Array | string): string =>
  createHash("sha256").update(Uint8Array.of(0x00)).update(bytes).digest("hex");

/** Hash of an inner node, RFC 9162 section 2.1.1: SHA-256 over 0x01, left and right. */
export const nodeHash = (left: string, right: string): string =>
  createHash("sha256").update(Uint8Array.of(0x01)).update(left, "hex").update(right, "hex").digest("hex");

/**
 * The roots of the full subtrees, largest first, after one more leaf. `size` counts the leaves before it; a tree of
 * `size` leaves has one full subtree for each 1 in its binary form, so appending costs at most log2(size) hashes.
 */
export function appendLeaf(frontier: readonly string[], size: number, leaf: string): string[] {
  const after = [...frontier];
  let root = leaf;
  for (let left = size; left % 2 === 1; left = (left - 1) / 2) {
    const sibling = after.pop();
    if (sibling === undefined) throw new RangeError(`appendLeaf: ${size} leaves need a longer frontier`);
    root = nodeHash(sibling, root);
  }
  return [...after, root];
}

/** Merkle tree hash of all leaves, RFC 9162 section 2.1.1; of none, the SHA-256 of nothing. */
export function treeHead(frontier: readonly string[]): string {
  if (frontier.length === 0) return createHash("sha256").digest("hex");
  return frontier.reduceRight((right, left) => nodeHash(left, right));
}
