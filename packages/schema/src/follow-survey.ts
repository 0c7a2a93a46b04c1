import type { Acting, StepRefusal } from "./follow-question.ts";
import { mayDo, type Act } from "./roles.ts";
import type { Inspection, SurveyedContainer, SurveyState, SurveyStep } from "./survey.ts";

type Followed = Pick<SurveyedContainer, "steps">;

/** How a container stands: a judgement holds until it is inspected again. */
export function surveyState({ steps }: Followed): SurveyState {
  const last = steps.findLast(({ step }) => step === "inspected" || step === "judged");
  if (last === undefined) return "offered";
  return last.step === "judged" ? last.outcome : "inspected";
}

/** The position it is assigned to; undefined while it has none. */
export function positionOf({ steps }: Followed): Extract<SurveyStep, { step: "assigned" }> | undefined {
  const last = steps.findLast(({ step }) => step === "assigned" || step === "released");
  return last?.step === "assigned" ? last : undefined;
}

export const lastInspection = ({ steps }: Followed): Inspection | undefined =>
  steps.findLast((step) => step.step === "inspected");

/** The act that each step is. */
export const surveyActs = {
  inspected: "survey-container",
  judged: "judge-container",
  assigned: "assign-container",
  released: "assign-container",
} as const satisfies Record<SurveyStep["step"], Act>;

/** Why someone may not take a step on a container; undefined when they may. Fit and limits are asked elsewhere. */
export function refuseSurveyStep(
  container: Followed,
  step: { step: "inspected" | "assigned" | "released" } | { step: "judged"; outcome: string },
  by: Acting,
): StepRefusal | undefined {
  const act = surveyActs[step.step];
  if (!mayDo[act].includes(by.role)) return { code: "role-refused", detail: `the ${by.role} does not do that` };
  const state = surveyState(container);
  const position = positionOf(container);
  const out = (detail: string): StepRefusal => ({ code: "step-refused", detail });
  switch (step.step) {
    case "inspected":
      return undefined;
    case "judged":
      if (state === "offered") return out("nobody has inspected it yet");
      return state === step.outcome ? out(`it is ${state} already`) : undefined;
    case "assigned":
      return position === undefined ? undefined : out(`it is assigned to ${position.tag} already: release it first`);
    case "released":
      return position === undefined ? out("it has no position") : undefined;
  }
}
