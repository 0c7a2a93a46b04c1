import { assess } from "@cornerway/engine";
import { Assessment, resultDigest, type Digest, type Scheme } from "@cornerway/schema";

/** Steps of one assessment: the engine's answer, its form, its digest. */
export const assessmentSteps = 3;

/**
 * The engine's answer to a scheme, bound to its content. Blocks until it is there; throws when it is not whole. `onStep`
 * is told how many steps are done.
 */
export function assessScheme(
  scheme: Scheme,
  contentDigest: Digest,
  onStep: (done: number) => void = () => undefined,
): { assessment: Assessment; resultDigest: Digest } {
  const answer = assess(scheme);
  onStep(1);
  const assessment = Assessment.parse(answer);
  onStep(2);
  return { assessment, resultDigest: resultDigest(contentDigest, assessment) };
}
