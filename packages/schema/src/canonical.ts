import { sha256 } from "@noble/hashes/sha2.js";
import { bytesToHex, utf8ToBytes } from "@noble/hashes/utils.js";
import { canonicalJson } from "./canonical-json.ts";
import type { Digest } from "./ids.ts";

/** SHA-256 over the UTF-8 bytes of the canonical JSON of a value. */
export const digestOf = (value: unknown): Digest => bytesToHex(sha256(utf8ToBytes(canonicalJson(value))));
