import type { Assessment } from "./assessment.ts";
import { digestOf } from "./canonical.ts";
import type { Digest } from "./ids.ts";
import type { Scheme } from "./scheme.ts";
import type { StrengthProof } from "./strength-report.ts";

/**
 * Everything that determines the answer: the scheme with its site, and the catalogue rows it is judged by (given as
 * their own digest, so that a draft can be digested at every move).
 */
export const contentOf = (scheme: Scheme, catalogDigest: Digest) => ({ catalog: catalogDigest, scheme });

/** Digest of everything that determines the answer. */
export const contentDigest = (scheme: Scheme, catalogDigest: Digest): Digest =>
  digestOf(contentOf(scheme, catalogDigest));

/** Digest of the answer with what stands behind it, bound to the content it was given for. */
export const resultDigest = (content: Digest, assessment: Assessment, proof?: StrengthProof): Digest =>
  digestOf(proof === undefined ? { assessment, content } : { assessment, content, proof: digestOf(proof) });
