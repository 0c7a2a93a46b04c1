import type { Mark } from "@cornerway/schema";
import type { Unit } from "../geometry/building.ts";
import { toSite } from "../geometry/place.ts";
import { balanceMarginMm } from "../geometry/tolerances.ts";
import type { Analysis } from "../load-path/analysis.ts";
import type { UnitRun } from "../load-path/run-down.ts";
import { rounded } from "../units.ts";
import { compassPoint } from "./compass.ts";
import { markOf } from "./mark-of.ts";

/**
 * A unit that stands with its resultant so near the edge of its bearings that where its own weight truly lies decides;
 * with imposed loads or without them, whichever is nearer. One that tips when empty has been told so.
 */
export function nearTippingMarks(analysis: Analysis, unit: Unit, run: UnitRun, above: readonly string[]): Mark[] {
  const empty = analysis.emptyRun.units.find(({ unitId }) => unitId === unit.id) ?? run;
  if (run.stand.state !== "stands" || empty.stand.state !== "stands") return [];
  const whenEmpty = rounded(empty.stand.insideMm) < rounded(run.stand.insideMm);
  const { insideMm, edge } = whenEmpty ? empty.stand : run.stand;
  const { resultant } = whenEmpty ? empty : run;
  if (insideMm >= balanceMarginMm) return [];
  const at = toSite(unit.frame, { xMm: resultant.xMm, yMm: resultant.yMm, zMm: 0 });
  const to = toSite(unit.frame, { xMm: edge.xMm, yMm: edge.yMm, zMm: 0 });
  return [
    markOf({
      fact: {
        kind: "near-tipping",
        ...(whenEmpty ? { whenEmpty: true } : {}),
        insideMm: rounded(insideMm),
        weightKn: rounded(resultant.forceKn),
        towards: compassPoint(to.xMm - at.xMm, to.yMm - at.yMm, analysis.structure.building.northMdeg),
      },
      verdict: "not checked",
      certainty: "common practice",
      elements: [unit.id, ...above],
      named: 1,
      at,
      basis:
        "Statics: the resultant of tare (middle of the type's range, taken at the middle of the unit), finishes, loads and all from above lies within 0.3 m of the edge of the bearings. The margin is common practice, no published source.",
    }),
  ];
}
