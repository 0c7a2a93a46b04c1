import type { Reaction } from "@cornerway/engine";

export interface PadSum {
  elementId: string;
  upKn: number;
  /** In any direction in plan. */
  levelKn: number;
}

/** Reactions of all that stands on one pad, in the order of the bearings. */
export function sumsByPad(reactions: readonly Reaction[]): PadSum[] {
  const sums = new Map<string, { up: number; east: number; north: number }>();
  for (const { elementId, upKn, eastKn, northKn } of reactions) {
    const sum = sums.get(elementId) ?? { up: 0, east: 0, north: 0 };
    sums.set(elementId, { up: sum.up + upKn, east: sum.east + eastKn, north: sum.north + northKn });
  }
  return [...sums].map(([elementId, { up, east, north }]) => ({
    elementId,
    upKn: up,
    levelKn: Math.hypot(east, north),
  }));
}
