import { sha256 } from "@noble/hashes/sha2.js";
import { bytesToHex, utf8ToBytes } from "@noble/hashes/utils.js";
import canonicalize from "canonicalize";
import type { Digest } from "./ids.ts";

/** Canonical JSON of a value, RFC 8785. Throws on what JSON cannot hold (NaN, lone surrogates, cycles, undefined). */
export function canonicalJson(value: unknown): string {
  const text = canonicalize(value);
  if (text === undefined) throw new TypeError("canonicalJson: the value has no JSON form");
  return text;
}

/** SHA-256 over the UTF-8 bytes of the canonical JSON of a value. */
export const digestOf = (value: unknown): Digest => bytesToHex(sha256(utf8ToBytes(canonicalJson(value))));
