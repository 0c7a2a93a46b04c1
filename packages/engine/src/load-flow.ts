import type { Scheme } from "@cornerway/schema";
import { caseReactions, type CaseReactions } from "./flow/case-reactions.ts";
import { memberForces, type MemberForces } from "./flow/member-forces.ts";
import { runForces, type RunForces } from "./flow/run-forces.ts";
import type { HazardRefusal } from "./loads/hazard-refusal.ts";
import { assumptionSets, type AssumptionId } from "./strength/assumption-sets.ts";
import { strengthBasisFor } from "./strength.ts";
import { solveSettling } from "./strength/settling.ts";
import { strengthMemory } from "./strength/strength-memory.ts";
import { strengthPlan } from "./strength/strength-plan.ts";
import type { StrengthRun } from "./strength/run-plan.ts";
import type { StrengthMemory } from "./strength/solve-runs.ts";

/** A run of the strength plan and the assumptions it is looked at under; the first set unless said. */
export type FlowRequest = { readonly run: string; readonly assumptions?: AssumptionId };

/** Where the load goes, run by run: solved anew for each that is asked for, by the plan the verdicts rest on. */
export type LoadFlow =
  | { readonly accepted: false; readonly refusals: readonly HazardRefusal[] }
  | {
      readonly accepted: true;
      readonly runs: readonly Pick<StrengthRun, "id" | "level">[];
      /** Forces of one run; null where nothing makes it stand. Throws a RangeError for a run the plan does not have. */
      readonly of: (request: FlowRequest) => RunForces | null;
      /** What the ground gives to each action case by itself. */
      readonly byCase: () => CaseReactions[];
      /** Greatest and least forces of every member over the strength-level runs that stand, under the first set. */
      readonly members: () => MemberForces[];
    };

/** Takes the memory of a strength run, and its `enlargement` of level loads, where there is one. Throws a RangeError for a scheme without containers. */
export function loadFlow(scheme: Scheme, memory: StrengthMemory = strengthMemory(), enlargement?: number): LoadFlow {
  const plan = strengthPlan(scheme, strengthBasisFor(scheme.site.edition), memory, enlargement);
  if (!plan.accepted) return plan;
  const [base] = assumptionSets;
  return {
    accepted: true,
    runs: plan.runs.map(({ id, level }) => ({ id, level })),
    of: ({ run: id, assumptions }) => {
      const run = plan.runs.find((one) => one.id === id);
      if (run === undefined) throw new RangeError(`the plan has no run ${id}`);
      const set = assumptionSets.find((one) => one.id === assumptions) ?? base;
      const { built, solved } = solveSettling(plan.analysis, plan.cases, [run], set, memory);
      return solved[0] === undefined ? null : runForces(plan.analysis, built, solved[0]);
    },
    byCase: () => caseReactions(plan.analysis, plan.cases, memory.cache),
    members: () => {
      const factored = plan.runs.filter(({ level }) => level === "strength");
      const { built, solved } = solveSettling(plan.analysis, plan.cases, factored, base, memory);
      const standing = solved.filter(({ held }) => held.length === 0);
      return memberForces(plan.analysis, built, base.assumptions, standing);
    },
  };
}
