import type { Condition, ConditionState, ConditionStep } from "./condition.ts";
import type { Acting, StepRefusal } from "./follow-question.ts";
import type { Role } from "./roles.ts";

export function conditionState({ steps }: Pick<Condition, "steps">): ConditionState {
  const last = steps.at(-1)?.step;
  return last === "met" || last === "closed" ? last : "open";
}

export function conditionWaitsFor(condition: Pick<Condition, "steps" | "owedBy" | "author">): Role | null {
  const state = conditionState(condition);
  if (state === "closed") return null;
  return state === "open" ? condition.owedBy : condition.author.role;
}

const mayFollow: Record<ConditionStep["step"], readonly ConditionState[]> = {
  met: ["open"],
  closed: ["met"],
  reopened: ["met", "closed"],
};

/**
 * Why someone may not take a step on a condition; undefined when they may. The role that owes it says how it is met, the
 * role that raised it closes it or opens it again, and whoever said it is met never closes it.
 */
export function refuseConditionStep(
  condition: Pick<Condition, "steps" | "owedBy" | "author">,
  step: ConditionStep["step"],
  by: Acting,
): StepRefusal | undefined {
  const state = conditionState(condition);
  if (step === "met" && by.role !== condition.owedBy)
    return { code: "closer-refused", detail: `the ${condition.owedBy} owes it` };
  if (step !== "met" && by.role !== condition.author.role)
    return { code: "closer-refused", detail: `the ${condition.author.role} raised it` };
  if (!mayFollow[step].includes(state)) return { code: "step-refused", detail: `the condition is ${state}` };
  if (step === "closed" && condition.steps.findLast((each) => each.step === "met")?.by.id === by.id)
    return { code: "closer-refused", detail: "whoever said that it is met does not close it" };
  return undefined;
}
