import {
  assessForRecord,
  assessForRecordShared,
  runShared,
  strengthSteps,
  type ShareElsewhere,
  type StrengthAssessment,
} from "@cornerway/engine";
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
 * is not whole.
 */
export const assessScheme = (scheme: Scheme, contentDigest: Digest): SchemeAssessed =>
  bound(assessForRecord(scheme), contentDigest);

/**
 * The same to the bit, shared with threads that help; rejects where the answer is not whole or a helper stopped. `onStep` is
 * told how many steps are done.
 */
export async function assessSchemeShared(
  scheme: Scheme,
  contentDigest: Digest,
  helpers: readonly ShareElsewhere[],
  onStep: (done: number) => void,
): Promise<SchemeAssessed> {
  const work = assessForRecordShared(scheme, helpers.length, onStep);
  const answer = await new Promise<StrengthAssessment>((settle, fail) => runShared(work, helpers, { settle, fail }));
  return bound(answer, contentDigest, onStep);
}

function bound(
  answer: StrengthAssessment,
  contentDigest: Digest,
  onStep: (done: number) => void = () => undefined,
): SchemeAssessed {
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
