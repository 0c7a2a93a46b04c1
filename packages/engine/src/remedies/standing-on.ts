import type { Analysis } from "../load-path/analysis.ts";

/** Units that stand on a unit, directly or on another, by id. */
export function unitsStandingOn({ bearings }: Analysis, unitId: string): string[] {
  const found: string[] = [];
  const next = [unitId];
  for (const below of next)
    for (const { unitId: above, contacts } of bearings)
      if (
        !found.includes(above) &&
        above !== unitId &&
        contacts.some(({ target }) => target.on !== "ground" && target.elementId === below)
      ) {
        found.push(above);
        next.push(above);
      }
  return found.toSorted();
}
