import type { Scheme, SolvedForces } from "@cornerway/schema";
import { assessStrength, type StrengthAssessment } from "./assess-strength.ts";
import { loadFlow } from "./load-flow.ts";
import { strengthBasisFor } from "./strength.ts";
import { strengthMemory } from "./strength/strength-memory.ts";
import { strengthOf, type TellProgress } from "./strength/strength-of.ts";

/**
 * What is recorded of a revision: its assessment, and in what stands behind it reactions by case and the forces of members
 * as solved, so that a print years later needs no engine of today. Throws a RangeError for a scheme without containers.
 */
export function assessForRecord(scheme: Scheme, tell?: TellProgress): StrengthAssessment {
  const memory = strengthMemory();
  const basis = strengthBasisFor(scheme.site.edition);
  const answer = assessStrength(scheme, tell, (drawing, told) => strengthOf(drawing, basis, memory, told));
  if (!answer.accepted) return answer;
  const flow = loadFlow(scheme, memory);
  if (!flow.accepted) throw new RangeError("assessForRecord: hazards that strength accepted were refused");
  const cases: SolvedForces["cases"] = flow.byCase().map(({ caseId, symbol, reactions }) => ({
    ...{ caseId, symbol },
    reactions:
      reactions?.map(({ elementId, at, eastKn, northKn, upKn }) => ({ elementId, at, eastKn, northKn, upKn })) ?? null,
  }));
  const { report, workings } = answer.proof;
  return { ...answer, proof: { report: { ...report, forces: { cases, members: flow.members() } }, workings } };
}
