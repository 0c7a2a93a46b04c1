import type { Assessment } from "@cornerway/schema";

/** One thing and what it stands on, of what is asked about. */
export interface StoodOn {
  readonly id: string;
  readonly on: readonly string[];
}

/**
 * What stands on any of these and is not among them: units that bear on them, and units, posts and beams which their posts
 * and beams hold. In the order of their ids.
 */
export function stoodOnBy({ bearings, marks }: Assessment, ids: readonly string[]): StoodOn[] {
  const asked = new Set(ids);
  const pairs = [
    ...bearings.flatMap(({ unitId, onElementId }) =>
      onElementId === undefined ? [] : [[unitId, onElementId] as const],
    ),
    ...marks.flatMap(({ fact, elements: [holder] }) =>
      (fact.kind === "post-carries" || fact.kind === "beam-carries") && holder !== undefined
        ? fact.holds.map((id) => [id, holder] as const)
        : [],
    ),
  ].filter(([id, on]) => asked.has(on) && !asked.has(id));
  return [...new Set(pairs.map(([id]) => id))].toSorted().map((id) => ({
    id,
    on: [...new Set(pairs.filter(([each]) => each === id).map(([, on]) => on))].toSorted(),
  }));
}
