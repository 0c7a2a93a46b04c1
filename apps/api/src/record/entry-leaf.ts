import { createHash } from "node:crypto";
import { type Actor, canonicalJson } from "@cornerway/schema";
import { leafHash } from "./tree-head.ts";

export interface LeafFacts {
  project: string;
  number: number;
  /** RFC 3339, UTC, milliseconds. */
  time: string;
  actor: Actor["id"];
  role: Actor["role"];
  kind: string;
  /** Salted digest of the payload. */
  digest: string;
}

/** Leaf of an entry: RFC 9162 leaf hash over the RFC 8785 form of its facts. */
export const entryLeaf = (facts: LeafFacts): string => leafHash(canonicalJson({ ...facts }));

/**
 * SHA-256 over the salt's bytes and the payload's RFC 8785 form: says nothing of a payload whose salt is withheld. Where an
 * access token acted, over payload and token together, so that nobody can say afterwards that it was done by hand.
 */
export const payloadDigest = (payload: { kind: string }, salt: string, token: string | undefined): string =>
  createHash("sha256")
    .update(salt, "hex")
    .update(canonicalJson(token === undefined ? payload : { payload, token }))
    .digest("hex");
