import type { Assessment, Mark, Verdict } from "@cornerway/schema";
import { worstVerdict } from "@cornerway/schema";

/** What the marks say of one element: its verdict, the mark that decides it, and whether an engineer has answered it. */
export type ElementVerdict = { verdict: Verdict; markId: string | null; screening: boolean };

/** The verdict of each element that a mark concerns first, and of each unit; the worst mark decides. */
export function elementVerdicts(
  assessment: Assessment | null,
  answeredMarkIds: ReadonlySet<string>,
): ReadonlyMap<string, ElementVerdict> {
  const found = new Map<string, ElementVerdict>();
  for (const { id, verdict } of assessment?.units ?? []) found.set(id, { verdict, markId: null, screening: true });
  for (const mark of assessment?.marks ?? []) {
    const id = mark.elements[0];
    if (id === undefined) continue;
    found.set(id, worse(found.get(id), mark, !answeredMarkIds.has(mark.id)));
  }
  return found;
}

function worse(before: ElementVerdict | undefined, mark: Mark, screening: boolean): ElementVerdict {
  const after = { verdict: mark.verdict, markId: mark.id, screening };
  if (before === undefined || before.markId === null) return after;
  return worstVerdict([before.verdict, mark.verdict]) === before.verdict ? before : after;
}
