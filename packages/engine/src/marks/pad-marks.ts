import type { Mark } from "@cornerway/schema";
import { castTogether } from "../bearing/solids-in-pads.ts";
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

/** Pads whose top a pad stands on, or strips and slabs cast with it that reach further down. */
const padsUnder = (building: Building, pad: PlacedPad): PlacedPad[] =>
  padsNear(building, pad.outline).filter((other) => {
    if (other.id === pad.id || overlapDepthMm(pad.outline, other.outline) < leastLapMm) return false;
    const undersideMm = pad.topZMm - pad.depthMm;
    const stands = Math.abs(undersideMm - other.topZMm) <= jointTolerances.contactGap.value;
    return stands || (cast(pad, other) && other.topZMm >= undersideMm && other.topZMm - other.depthMm < undersideMm);
  });

const cast = (one: PlacedPad, other: PlacedPad): boolean => castTogether(one, other) && heightsMeet(one, other);

const heightsMeet = (one: PlacedPad, other: PlacedPad): boolean =>
  Math.min(one.topZMm, other.topZMm) - Math.max(one.topZMm - one.depthMm, other.topZMm - other.depthMm) >= 0;

function idlePadMarks({ structure, bearings, footings, beamSupports }: Analysis): Mark[] {
  const used = new Set<string>();
  for (const { contacts } of bearings)
    for (const { target } of contacts) if (target.on === "pad") used.add(target.elementId);
  for (const footing of footings.values()) if (footing.on === "pad") used.add(footing.elementId);
  for (const supports of beamSupports.values())
    for (const { target } of supports) if (target.on === "pad") used.add(target.elementId);
  for (const pad of structure.building.pads) for (const { id } of padsUnder(structure.building, pad)) used.add(id);
  const works = new Set(
    structure.building.pads.flatMap((pad) => (used.has(pad.id) ? castWith(structure.building, pad) : [])),
  );
  return structure.building.pads
    .filter(({ id }) => !used.has(id) && !works.has(id))
    .map(({ id, xMm, yMm, topZMm }) =>
      markOf({
        fact: { kind: "pad-holds-nothing" },
        verdict: "not checked",
        certainty: "derived",
        elements: [id],
        at: { xMm, yMm, zMm: topZMm },
        basis: "Geometry: no fitting, rail, post or beam stands on this pad.",
      }),
    );
}

/** Strips and slabs cast in one piece with this one. */
const castWith = (building: Building, pad: PlacedPad): string[] =>
  padsNear(building, pad.outline).flatMap((other) =>
    other.id !== pad.id && cast(pad, other) && overlapDepthMm(pad.outline, other.outline) >= 0 ? [other.id] : [],
  );
