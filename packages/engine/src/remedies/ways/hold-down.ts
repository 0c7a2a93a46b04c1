import { FreshNames } from "../fresh-names.ts";
import { heldAt, kindOfHolds } from "../held-at.ts";
import type { Generator, RemedyGround, Trial } from "../trial.ts";

/**
 * What holds a unit down at its own bearings: a stock lock where it serves between fittings, else a made connection, an anchor
 * on a pad, a seat welded to the rail. First at all that could pull, and down the stack to the ground as well.
 */
export const holdDown: Generator = (ground) => {
  const { scheme, analysis, mark } = ground;
  const [unitId] = mark.elements;
  if (unitId === undefined) return [];
  const own = heldAt(scheme, analysis, new FreshNames(scheme), [unitId]);
  const down = heldAt(scheme, analysis, new FreshNames(scheme), stackUnder(ground, unitId));
  const trials = [own, down].flatMap((operations, at): Trial[] =>
    operations.length === 0 || (at === 1 && operations.length === own.length)
      ? []
      : [
          {
            change: { kind: "made connections", unitId, places: operations.length, as: kindOfHolds(operations) },
            operations,
          },
        ],
  );
  return trials.length === 0 ? [] : [trials];
};

/** The unit and all units it stands on, to the ground. */
function stackUnder({ analysis }: RemedyGround, unitId: string): string[] {
  const found = [unitId];
  for (const id of found)
    for (const { contacts } of analysis.bearings.filter((bearing) => bearing.unitId === id))
      for (const { target } of contacts)
        if ((target.on === "fitting" || target.on === "rail") && !found.includes(target.elementId))
          found.push(target.elementId);
  return found;
}
