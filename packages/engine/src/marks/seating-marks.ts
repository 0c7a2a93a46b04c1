import type { Mark } from "@cornerway/schema";
import type { Contact } from "../bearing/contact.ts";
import { fittingOutline } from "../bearing/top-parts.ts";
import { jointTolerances } from "../catalog/joint-tolerances.ts";
import { padsNear, type Building, type PlacedPad, type Unit } from "../geometry/building.ts";
import { toSite } from "../geometry/place.ts";
import { holdsPoint, reachPastMm, rectCorners, type PlanRect } from "../geometry/plan-rect.ts";
import { touchMm } from "../geometry/tolerances.ts";
import type { Analysis } from "../load-path/analysis.ts";
import type { UnitRun } from "../load-path/run-down.ts";
import { rounded } from "../units.ts";
import { markOf } from "./mark-of.ts";

/** Whether a unit truly sits on what it is drawn to stand on: clear of it, past the edge of its pads, or in the ground. */
export const seatingMarks = (analysis: Analysis, unit: Unit, run: UnitRun): Mark[] => [
  ...clearMarks(unit, run),
  ...offPadMarks(analysis, unit, run),
  ...inGroundMarks(analysis, unit),
];

function inGroundMarks({ structure: { building } }: Analysis, unit: Unit): Mark[] {
  const depthMm = building.groundZMm - unit.baseZMm;
  if (depthMm <= jointTolerances.contactGap.value) return [];
  return [
    markOf({
      fact: { kind: "below-ground", depthMm: rounded(depthMm) },
      verdict: "not checked",
      certainty: "derived",
      elements: [unit.id],
      at: toSite(unit.frame, { xMm: 0, yMm: 0, zMm: 0 }),
      basis:
        "Geometry: its underside lies below the ground level of the site. Earth and water pressure, uplift and the pit are not judged.",
    }),
  ];
}

function clearMarks(unit: Unit, { contacts }: UnitRun): Mark[] {
  const clear = contacts.filter(
    (contact) =>
      contact.seatId === undefined && contact.gapMm > jointTolerances.contactGap.value && isPut(contact, contacts),
  );
  const gapMm = Math.max(...clear.map((contact) => contact.gapMm));
  const widest = clear.find((contact) => contact.gapMm === gapMm);
  if (widest === undefined) return [];
  return [
    markOf({
      fact: { kind: "stands-clear", gapMm: rounded(gapMm), places: clear.length },
      verdict: "not checked",
      certainty: "derived",
      elements: [unit.id, ...clear.flatMap(targetOf).toSorted()],
      named: 1,
      at: widest.at,
      basis:
        "Geometry: these places are taken to be packed and to bear; up to 25 mm is taken up by packing (common practice, no published source). Unpacked they take nothing and the forces below are others.",
    }),
  ];
}

const targetOf = ({ target }: Contact): string[] => (target.on === "ground" ? [] : [target.elementId]);

/**
 * A place drawn to bear and nothing else said of its gap: a rail over a pad; a fitting over a fitting, post or pad
 * where all gaps are one. Gaps that differ rock the unit, gaps over rails are told with the rails.
 */
function isPut({ fitting, target }: Contact, contacts: readonly Contact[]): boolean {
  if (fitting === undefined) return target.on === "pad";
  return target.on !== "rail" && isLevel(contacts);
}

function isLevel(contacts: readonly Contact[]): boolean {
  const gaps = contacts.flatMap(({ fitting, gapMm, seatId }) =>
    fitting === undefined ? [] : [seatId === undefined ? gapMm : 0],
  );
  return Math.max(...gaps) - Math.min(...gaps) <= jointTolerances.contactGap.value;
}

/** Whether strips and slabs cast together at one level lie under every corner of a fitting. */
function isCastUnder(building: Building, pad: PlacedPad, fitting: PlanRect): boolean {
  if (pad.pad.support === undefined) return false;
  const together = padsNear(building, fitting).filter(
    (other) =>
      other.pad.support !== undefined && Math.abs(other.topZMm - pad.topZMm) <= jointTolerances.contactGap.value,
  );
  return rectCorners(fitting).every(({ xMm, yMm }) =>
    together.some(({ outline }) => holdsPoint(outline, xMm, yMm, touchMm)),
  );
}

function offPadMarks({ structure: { building } }: Analysis, unit: Unit, { contacts }: UnitRun): Mark[] {
  const past = contacts.flatMap((contact) => {
    const pad = contact.target.on === "pad" ? building.padById.get(contact.target.elementId) : undefined;
    if (pad === undefined || contact.fitting === undefined) return [];
    const fitting = fittingOutline(unit, contact.localXMm, contact.localYMm);
    const pastMm = reachPastMm(fitting, pad.outline);
    return pastMm > touchMm && !isCastUnder(building, pad, fitting) ? [{ padId: pad.id, at: contact.at, pastMm }] : [];
  });
  const pastMm = Math.max(...past.map((corner) => corner.pastMm));
  const furthest = past.find((corner) => corner.pastMm === pastMm);
  if (furthest === undefined) return [];
  return [
    markOf({
      fact: { kind: "off-its-pad", corners: past.length, pastMm: rounded(pastMm) },
      verdict: "not checked",
      certainty: "memory",
      elements: [unit.id, ...past.map(({ padId }) => padId).toSorted()],
      named: 1,
      at: furthest.at,
      basis:
        "Geometry: the corner fitting, 178 × 162 mm (ISO 1161, from memory), does not lie wholly on its pad. It bears on an edge or beside its centre; what fitting and pad make of that is not judged.",
    }),
  ];
}
