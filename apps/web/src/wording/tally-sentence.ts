import { verdicts } from "@cornerway/schema";
import type { Mark, Verdict } from "@cornerway/schema";

const phrase: Record<Verdict, string> = {
  "does not work": "does not work",
  "needs the engineer": "needs the engineer",
  "not checked": "not checked",
  "works with steel": "works with steel",
  "works as built": "works as built",
};

/** "1 note does not work, 2 not checked." Worst first; never the whole list. */
export function tallySentence(marks: readonly Mark[]): string {
  const parts = verdicts
    .toReversed()
    .map((verdict) => ({ verdict, count: marks.filter((mark) => mark.verdict === verdict).length }))
    .filter(({ count }) => count > 0)
    .map(
      ({ verdict, count }, at) => `${count}${at === 0 ? (count === 1 ? " note" : " notes") : ""} ${phrase[verdict]}`,
    );
  return parts.length === 0 ? "No notes." : `${parts.join(", ")}.`;
}
