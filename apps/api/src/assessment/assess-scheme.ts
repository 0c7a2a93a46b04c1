import { assess } from "@cornerway/engine";
import { resultDigest, type Digest, type Scheme } from "@cornerway/schema";
import type { Assessed } from "../services/record-assessment.ts";

/** The engine's answer to a scheme, bound to its content; blocks until it is there. */
export function assessScheme(scheme: Scheme, contentDigest: Digest): Extract<Assessed, { ok: true }> {
  const assessment = assess(scheme);
  return { ok: true, assessment, resultDigest: resultDigest(contentDigest, assessment) };
}
