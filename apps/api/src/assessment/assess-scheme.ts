import { assess } from "@cornerway/engine";
import { Assessment, resultDigest, type Digest, type Scheme } from "@cornerway/schema";

/** The engine's answer to a scheme, bound to its content. Blocks until it is there; throws when it is not whole. */
export function assessScheme(scheme: Scheme, contentDigest: Digest): { assessment: Assessment; resultDigest: Digest } {
  const assessment = Assessment.parse(assess(scheme));
  return { assessment, resultDigest: resultDigest(contentDigest, assessment) };
}
