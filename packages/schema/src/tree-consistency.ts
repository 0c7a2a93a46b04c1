import { sha256 } from "@noble/hashes/sha2.js";
import { bytesToHex, concatBytes, hexToBytes } from "@noble/hashes/utils.js";
import type { Digest } from "./ids.ts";

/** A tree head with the number of entries under it. */
export type SizedHead = { readonly size: number; readonly head: Digest };

/** True when the proof shows the later head to continue the earlier one, RFC 9162 section 2.1.4.2. */
export function isContinued(earlier: SizedHead, later: SizedHead, proof: readonly Digest[]): boolean {
  if (earlier.size < 1 || earlier.size > later.size) return false;
  if (earlier.size === later.size) return proof.length === 0 && earlier.head === later.head;
  const path = isPowerOfTwo(earlier.size) ? [earlier.head, ...proof] : [...proof];
  const [start, ...rest] = path;
  if (start === undefined) return false;
  let [fn, sn] = [earlier.size - 1, later.size - 1];
  while (fn % 2 === 1) [fn, sn] = [(fn - 1) / 2, Math.floor(sn / 2)];
  let [first, second] = [start, start];
  for (const hash of rest) {
    if (sn === 0) return false;
    if (fn % 2 === 1 || fn === sn) {
      [first, second] = [nodeHash(hash, first), nodeHash(hash, second)];
      while (fn % 2 === 0 && fn !== 0) [fn, sn] = [fn / 2, Math.floor(sn / 2)];
    } else second = nodeHash(second, hash);
    [fn, sn] = [Math.floor(fn / 2), Math.floor(sn / 2)];
  }
  return sn === 0 && first === earlier.head && second === later.head;
}

/** Hash of an inner node, RFC 9162 section 2.1.1: SHA-256 over 0x01, left and right. */
export const nodeHash = (left: Digest, right: Digest): Digest =>
  bytesToHex(sha256(concatBytes(Uint8Array.of(0x01), hexToBytes(left), hexToBytes(right))));

function isPowerOfTwo(size: number): boolean {
  let rest = size;
  while (rest % 2 === 0) rest /= 2;
  return rest === 1;
}
