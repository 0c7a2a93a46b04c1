import type { AnswerKind, RecordPayload } from "@cornerway/schema";
import type { NameOf } from "./name-of.ts";

type Followed<K extends RecordPayload["kind"]> = Extract<RecordPayload, { kind: K }>;

/** What the engineer answers, as a heading says it. */
export const answerWords: Record<AnswerKind, string> = {
  "as drawn": "As drawn",
  "with conditions": "With conditions",
  "no, but these options": "No, but these options",
  "need information": "More information is needed",
};

/** What was done about a question, as the record says it. */
export function questionStepSentence(
  { number, elementId, step }: Followed<"question followed">,
  nameOf: NameOf,
): string {
  const question = `Question ${number} on ${nameOf(elementId)}`;
  switch (step.step) {
    case "answered":
      return `${question} answered for revision ${step.revision}: ${answerWords[step.answer.kind].toLowerCase()}.`;
    case "information given":
      return `${question}, what was wanted to know: ${step.text}`;
    case "closed":
      return `${question} closed.`;
    case "reopened":
      return `${question} opened again: ${step.text}`;
  }
}

/** What was done about a condition, as the record says it. */
export function conditionStepSentence({ number, step }: Followed<"condition followed">): string {
  switch (step.step) {
    case "met":
      return `Condition ${number} met: ${step.text}`;
    case "closed":
      return `Condition ${number} closed.`;
    case "reopened":
      return `Condition ${number} opened again: ${step.text}`;
  }
}
