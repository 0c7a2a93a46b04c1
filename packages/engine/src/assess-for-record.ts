import type { Scheme, SolvedForces } from "@cornerway/schema";
import { assessedWith, type StrengthAssessment } from "./assess-strength.ts";
import { loadFlow } from "./load-flow.ts";
import { strengthBasisFor } from "./strength.ts";
import type { ShareElsewhere } from "./strength/share-elsewhere.ts";
import type { StrengthMemory } from "./strength/solve-runs.ts";
import { strengthMemory } from "./strength/strength-memory.ts";
import { strengthOf, type Strength, type TellProgress } from "./strength/strength-of.ts";
import { strengthShared } from "./strength/strength-shared.ts";

/**
 * What is recorded of a revision: its assessment, and in what stands behind it reactions by case and the forces of members
 * as solved, so that a print years later needs no engine of today. Throws a RangeError for a scheme without containers.
 */
export function assessForRecord(scheme: Scheme, tell?: TellProgress): StrengthAssessment {
  const memory = strengthMemory();
  return recorded(scheme, strengthOf(scheme, strengthBasisFor(scheme.site.edition), memory, tell), memory);
}

/** The same to the bit, with other threads that help; rejects with what stopped one of them. */
export async function assessForRecordShared(
  scheme: Scheme,
  helpers: readonly ShareElsewhere[],
  tell?: TellProgress,
): Promise<StrengthAssessment> {
  const memory = strengthMemory();
  const basis = strengthBasisFor(scheme.site.edition);
  return recorded(scheme, await strengthShared(scheme, basis, memory, helpers, tell), memory);
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
