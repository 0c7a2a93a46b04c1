import type { Scheme, SolvedForces } from "@cornerway/schema";
import { assessedWith, type StrengthAssessment } from "./assess-strength.ts";
import { loadFlow } from "./load-flow.ts";
import { strengthBasisFor } from "./strength.ts";
import { alone, type SharedWork } from "./strength/shared-work.ts";
import type { StrengthMemory } from "./strength/solve-runs.ts";
import { strengthMemory } from "./strength/strength-memory.ts";
import type { Strength, TellProgress } from "./strength/strength-of.ts";
import { strengthShared } from "./strength/strength-shared.ts";

/**
 * What is recorded of a revision: its assessment, and in what stands behind it reactions by case and the forces of members
 * as solved, so that a print years later needs no engine of today. Throws a RangeError for a scheme without containers.
 */
export const assessForRecord = (scheme: Scheme, tell?: TellProgress): StrengthAssessment =>
  alone(assessForRecordShared(scheme, 0, tell));

/** The same to the bit, shared with so many helpers. */
export function* assessForRecordShared(
  scheme: Scheme,
  helping: number,
  tell?: TellProgress,
): SharedWork<StrengthAssessment> {
  const memory = strengthMemory();
  const basis = strengthBasisFor(scheme.site.edition);
  return recorded(scheme, yield* strengthShared(scheme, basis, memory, helping, tell), memory);
}

function recorded(scheme: Scheme, judged: Strength, memory: StrengthMemory): StrengthAssessment {
  const answer = assessedWith(scheme, judged);
  if (!answer.accepted) return answer;
  const flow = loadFlow(scheme, memory, judged.accepted ? judged.enlargement : undefined);
  if (!flow.accepted) throw new RangeError("assessForRecord: hazards that strength accepted were refused");
  const cases: SolvedForces["cases"] = flow.byCase().map(({ caseId, symbol, reactions }) => ({
    ...{ caseId, symbol },
    reactions:
      reactions?.map(({ elementId, at, eastKn, northKn, upKn }) => ({ elementId, at, eastKn, northKn, upKn })) ?? null,
  }));
  const { report, workings } = answer.proof;
  return { ...answer, proof: { report: { ...report, forces: { cases, members: flow.members() } }, workings } };
}
