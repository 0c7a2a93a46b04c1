import type { Mark } from "@cornerway/schema";
import { jointTolerances } from "../catalog/joint-tolerances.ts";
import { padsNear, type Building, type PlacedPad } from "../geometry/building.ts";
import { overlapDepthMm } from "../geometry/plan-rect.ts";
import { leastLapMm } from "../geometry/tolerances.ts";
import type { Analysis } from "../load-path/analysis.ts";
import { rounded } from "../units.ts";
import { markOf } from "./mark-of.ts";
import type { Standing } from "./standing.ts";

/** Pads that nothing stands on, and pads that stand on nothing. */
export const padMarks = (analysis: Analysis, standing: Standing): Mark[] => [
  ...idlePadMarks(analysis),
  ...offGroundMarks(analysis, standing),
];

function offGroundMarks({ structure: { building } }: Analysis, standing: Standing): Mark[] {
  return building.pads.flatMap((pad) => {
    const undersideMm = pad.topZMm - pad.depthMm;
    const aboveMm = undersideMm - building.groundZMm;
    if (aboveMm <= jointTolerances.contactGap.value || padsUnder(building, pad).length > 0) return [];
    return [
      markOf({
        fact: { kind: "pad-off-ground", aboveMm: rounded(aboveMm) },
        verdict: "does not work",
        certainty: "derived",
        elements: [pad.id, ...standing.unitsAbove(pad.id)],
        named: 1,
        at: { xMm: pad.xMm, yMm: pad.yMm, zMm: undersideMm },
        basis:
          "Geometry: top of the pad less its depth lies above the ground level of the site, and no other pad is under it.",
      }),
    ];
  });
}

const padsUnder = (building: Building, { id, outline, topZMm, depthMm }: PlacedPad): PlacedPad[] =>
  padsNear(building, outline).filter(
    (other) =>
      other.id !== id &&
      Math.abs(topZMm - depthMm - other.topZMm) <= jointTolerances.contactGap.value &&
      overlapDepthMm(outline, other.outline) >= leastLapMm,
  );

function idlePadMarks({ structure, bearings, footings }: Analysis): Mark[] {
  const used = new Set<string>();
  for (const { contacts } of bearings)
    for (const { target } of contacts) if (target.on === "pad") used.add(target.elementId);
  for (const footing of footings.values()) if (footing.on === "pad") used.add(footing.elementId);
  for (const pad of structure.building.pads) for (const { id } of padsUnder(structure.building, pad)) used.add(id);
  return structure.building.pads
    .filter(({ id }) => !used.has(id))
    .map(({ id, xMm, yMm, topZMm }) =>
      markOf({
        fact: { kind: "pad-holds-nothing" },
        verdict: "not checked",
        certainty: "derived",
        elements: [id],
        at: { xMm, yMm, zMm: topZMm },
        basis: "Geometry: no fitting, rail or post stands on this pad.",
      }),
    );
}
