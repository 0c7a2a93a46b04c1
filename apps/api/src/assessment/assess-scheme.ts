import { assessForRecord, strengthSteps } from "@cornerway/engine";
import { Assessment, resultDigest, StrengthProof, type Digest, type Scheme } from "@cornerway/schema";
import type { ProofText } from "../store/proof-rows.ts";

/** Steps of one assessment: each set of assumptions solved, the engine's answer, its form, its digest. */
export const assessmentSteps = strengthSteps + 3;

/** The engine's answer with what stands behind it; `proof` is null where strength could not be judged. */
export interface SchemeAssessed {
  assessment: Assessment;
  resultDigest: Digest;
  proof: ProofText | null;
}

/**
 * The engine's answer to a scheme, load path and strength, bound to its content. Blocks until it is there; throws when it
 * is not whole. `onStep` is told how many steps are done.
 */
export function assessScheme(
  scheme: Scheme,
  contentDigest: Digest,
  onStep: (done: number) => void = () => undefined,
): SchemeAssessed {
  const answer = assessForRecord(scheme, onStep);
  onStep(strengthSteps + 1);
  const assessment = Assessment.parse(answer.assessment);
  const proof = answer.accepted ? StrengthProof.parse(answer.proof) : undefined;
  onStep(strengthSteps + 2);
  const digest = resultDigest(contentDigest, assessment, proof);
  return { assessment, resultDigest: digest, proof: proof === undefined ? null : textOf(proof) };
}

const textOf = ({ report, workings }: StrengthProof): ProofText => ({
  report: JSON.stringify(report),
  workings: workings.map(({ id, working }) => ({ id, working: JSON.stringify(working) })),
});
