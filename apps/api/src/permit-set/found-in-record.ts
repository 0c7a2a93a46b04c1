import { usualSurveyLimits } from "@cornerway/engine";
import type { RecordEntry, SiteWord, SurveyedContainer, SurveyLimits } from "@cornerway/schema";

/** The containers that were offered, with every step on them, as the record tells it. */
export function containersIn(entries: readonly RecordEntry[]): SurveyedContainer[] {
  const found = new Map<string, SurveyedContainer>();
  for (const { payload } of entries) {
    if (payload?.kind === "container offered") found.set(payload.container.id, { ...payload.container, steps: [] });
    if (payload?.kind !== "container followed") continue;
    const before = found.get(payload.containerId);
    if (before !== undefined) found.set(before.id, { ...before, steps: [...before.steps, payload.step] });
  }
  return [...found.values()];
}

/** What they are held against, as of the last of these entries. */
export function limitsIn(entries: readonly RecordEntry[]): SurveyLimits {
  const last = entries.findLast(({ payload }) => payload?.kind === "survey limits set")?.payload;
  return last?.kind === "survey limits set" ? last.set.limits : usualSurveyLimits;
}

export const siteWordsIn = (entries: readonly RecordEntry[]): SiteWord[] =>
  entries.flatMap(({ payload }) => (payload?.kind === "site word said" ? [payload.word] : []));
