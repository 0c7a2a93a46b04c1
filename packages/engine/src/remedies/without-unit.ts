import type { Scheme } from "@cornerway/schema";

/** The scheme without one unit and what belongs to it; undefined where nothing would be left. */
export function withoutUnit(scheme: Scheme, unitId: string): Scheme | undefined {
  const containers = scheme.containers.filter(({ id }) => id !== unitId);
  if (containers.length === 0) return undefined;
  const others = <T extends { readonly containerId: string }>(all: readonly T[]): T[] =>
    all.filter(({ containerId }) => containerId !== unitId);
  return {
    ...scheme,
    containers,
    openings: others(scheme.openings),
    loads: others(scheme.loads),
    freeLoads: others(scheme.freeLoads),
    uses: others(scheme.uses),
    locks: others(scheme.locks),
    seats: scheme.seats.filter(({ upperId, lowerId }) => upperId !== unitId && lowerId !== unitId),
    ties: scheme.ties.filter(({ aId, bId }) => aId !== unitId && bId !== unitId),
    overrides: scheme.overrides.filter(({ elementId }) => elementId !== unitId),
  };
}
