import type { CommentStep } from "@cornerway/schema";

/** What was done about a comment of the authority. */
export function commentStepSentence({ number, step }: { number: string; step: CommentStep }): string {
  switch (step.step) {
    case "assigned":
      return `${step.toName} sees to comment ${number} of the authority.`;
    case "answered":
      return `Comment ${number} of the authority answered, ${step.form}: sheet ${step.sheet} of revision ${step.revision}.`;
    case "closed":
      return `Comment ${number} of the authority closed.`;
    case "opened again":
      return `Comment ${number} of the authority opened again: ${step.why}`;
  }
}
