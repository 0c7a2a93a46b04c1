import type { Mark } from "@cornerway/schema";
import { touchMm } from "../geometry/tolerances.ts";
import type { Analysis } from "../load-path/analysis.ts";
import type { RailLoad } from "../load-path/run-down.ts";
import { rounded } from "../units.ts";
import { markOf } from "./mark-of.ts";

/** Loads that come down on a top rail where the sheet below it is cut: one mark for each opening and loader. */
export function loadOverOpeningMarks(analysis: Analysis): Mark[] {
  const found = new Map<string, { load: RailLoad; openingId: string; forceKn: number }>();
  for (const load of analysis.run.railLoads) {
    const { cuts } = analysis.structure.fabric(load.unitId);
    for (const { opening, rect } of cuts) {
      if (opening.face !== load.rail || load.uMm < rect.u0 - touchMm || load.uMm > rect.u1 + touchMm) continue;
      const key = `${opening.id}+${load.unitId}+${load.fromId}`;
      const sum = (found.get(key)?.forceKn ?? 0) + load.forceKn;
      found.set(key, { load: found.get(key)?.load ?? load, openingId: opening.id, forceKn: sum });
    }
  }
  return [...found.values()].map(({ load, openingId, forceKn }) =>
    markOf({
      fact: { kind: "load-over-opening", forceKn: rounded(forceKn), railCut: false },
      verdict: "not checked",
      certainty: "common practice",
      elements: [openingId, load.unitId, load.fromId],
      at: load.at,
      basis:
        "The load comes down on the top rail where the sheet under it is cut; only the rail and the sheet above the opening are left to carry it to either side. Strength not judged; force by statics, ± not known.",
    }),
  );
}
