import type { DraftActRow } from "../store/draft-rows.ts";

/**
 * Of acts given latest first, those whose effect is still there: an act and the undo that took it back, when both are
 * among them, leave every element as it was before.
 */
export function liveActs(latestFirst: readonly DraftActRow[]): DraftActRow[] {
  const ids = new Set(latestFirst.map(({ id }) => id));
  const cancelled = new Set<string>();
  for (const { id, undoes } of latestFirst) {
    if (undoes === null || cancelled.has(id) || !ids.has(undoes)) continue;
    cancelled.add(id).add(undoes);
  }
  return latestFirst.filter(({ id }) => !cancelled.has(id));
}
