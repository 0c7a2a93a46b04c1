import type { FactOf, Mark, MarkFact } from "@cornerway/schema";
import type { Contact, OpenCorner } from "../bearing/contact.ts";
import { parallel } from "../bearing/joint.ts";
import { jointTolerances } from "../catalog/joint-tolerances.ts";
import type { Rail } from "../fabric/fabric-of.ts";
import type { Unit } from "../geometry/building.ts";
import type { Analysis } from "../load-path/analysis.ts";
import type { UnitRun } from "../load-path/run-down.ts";
import { rounded } from "../units.ts";
import { markOf } from "./mark-of.ts";
import { openEnds } from "./open-ends.ts";

/** What is to be said of how one unit bears: made connections, rails, corners on air, two heights, no pad. */
export function bearingMarks(analysis: Analysis, unit: Unit, run: UnitRun): Mark[] {
  return [
    ...madeConnectionMarks(unit, run),
    ...railMarks(analysis, unit, run),
    ...onBeamMarks(unit, run),
    ...cornerMarks(analysis, unit, run),
    ...rockingMarks(unit, run),
    ...groundMarks(unit, run),
  ];
}

const lockBasis =
  "A stock lock needs apertures parallel (0° or 180°) and hole centres within 10 mm along and 5 mm across (ISO 668 tolerances on size, from memory); full bearing within 38 mm along and 25.4 mm across (ISO 1496-1 stacking test offsets, from memory).";

function madeConnectionMarks(unit: Unit, { contacts }: UnitRun): Mark[] {
  const marks = new Map<string, Mark>();
  const needing = contacts.filter(({ fitting, joint }) => fitting !== undefined && joint.why !== undefined);
  for (const { target, joint, offsetXMm, offsetYMm, at } of needing) {
    if (target.on !== "fitting" || joint.why === undefined) continue;
    const offsetMm = rounded(Math.sqrt(offsetXMm * offsetXMm + offsetYMm * offsetYMm));
    const pair = needing.filter((one) => one.target.on === "fitting" && one.target.elementId === target.elementId);
    const drawn = pair.filter(({ heldById }) => heldById !== undefined).length;
    const mark = markOf({
      fact: { kind: "made-connection", why: joint.why, offsetMm, corners: pair.length, drawn },
      verdict: "not checked",
      certainty: "memory",
      elements: [unit.id, target.elementId],
      at,
      basis: lockBasis,
    });
    const known = marks.get(mark.id)?.fact;
    if (known?.kind !== "made-connection" || decides({ why: joint.why, offsetMm }, known)) marks.set(mark.id, mark);
  }
  return [...marks.values()];
}

type Apart = Pick<FactOf<"made-connection">, "why" | "offsetMm">;

/** Of two corners of one pair of units the one further from what a lock needs is told. */
const decides = (one: Apart, other: Apart): boolean =>
  whyRank[one.why] > whyRank[other.why] || (one.why === other.why && one.offsetMm > other.offsetMm);

const whyRank: Record<Apart["why"], number> = {
  "hole centres apart": 0,
  "bears off the corner": 1,
  "apertures cross": 2,
};

function railMarks(analysis: Analysis, unit: Unit, run: UnitRun): Mark[] {
  const crossings = railCrossings(analysis, run);
  const first = crossings[0];
  if (first === undefined) return [];
  const below = crossings.map((crossing) => crossing.below);
  return [
    markOf({
      fact: {
        kind: "borne-on-rail",
        crossings: crossings.map(({ contact, below: lower, forceKn }) => ({
          at: roundedPoint(contact.at),
          forceKn: rounded(forceKn),
          toNearestFittingMm: rounded(toNearestFitting(lower, contact)),
          gapMm: rounded(contact.gapMm),
          ...(contact.seatId === undefined ? {} : { seatId: contact.seatId }),
        })),
        turned: below.some(({ frame }) => !parallel(unit.frame.turnMdeg, frame.turnMdeg)),
      },
      verdict: "not checked",
      certainty: "common practice",
      elements: [unit.id, ...below.map(({ id }) => id).toSorted()],
      named: 1,
      at: first.contact.at,
      basis:
        "Top fittings stand 6 mm above the roof and the base 12.5 mm above the fittings' underside (ISO 1496-1, from memory): fitting over rail 6, rail over fitting 12.5, rail over rail 18.5 mm to pack. Rail strength not judged; force by statics, ± not known.",
    }),
  ];
}

/** Where it crosses rails. One that tips lifts off some: that they take nothing then follows from the tipping. */
function railCrossings({ structure: { building } }: Analysis, { contacts, forcesKn, stand }: UnitRun) {
  return contacts.flatMap((contact, at) => {
    const below = contact.target.on === "rail" ? building.unitById.get(contact.target.elementId) : undefined;
    const forceKn = forcesKn[at] ?? 0;
    const lifts = stand.state === "tips" && rounded(forceKn) === 0;
    return below === undefined || lifts ? [] : [{ contact, below, forceKn }];
  });
}

const roundedPoint = ({ xMm, yMm, zMm }: Contact["at"]) => ({
  xMm: rounded(xMm),
  yMm: rounded(yMm),
  zMm: rounded(zMm),
});

function toNearestFitting(lower: Unit, { target }: Contact): number {
  if (target.on !== "rail") return 0;
  const { lengthMm, widthMm } = lower.dimensions;
  const isSide = (rail: Rail) => rail === "left" || rail === "right";
  const along = lower.topFittings
    .filter(({ name }) => name.includes(target.rail))
    .map(({ localXMm, localYMm }) => (isSide(target.rail) ? localXMm + lengthMm / 2 : localYMm + widthMm / 2));
  return Math.min(...along.map((uMm) => Math.abs(uMm - target.uMm)));
}

/** Fittings and rails that come down on added beams. */
function onBeamMarks(unit: Unit, { contacts, forcesKn }: UnitRun): Mark[] {
  const on = contacts.flatMap((contact, at) =>
    contact.target.on === "beam" ? [{ contact, beamId: contact.target.elementId, forceKn: forcesKn[at] ?? 0 }] : [],
  );
  const heaviest = on.toSorted((a, b) => b.forceKn - a.forceKn)[0];
  if (heaviest === undefined) return [];
  const offAxisMm = Math.max(...on.map(({ contact: { offsetXMm: x, offsetYMm: y } }) => Math.sqrt(x * x + y * y)));
  return [
    markOf({
      fact: {
        kind: "borne-on-beam",
        places: on.length,
        forceKn: rounded(heaviest.forceKn),
        offAxisMm: rounded(offAxisMm),
        gapMm: rounded(Math.max(0, ...on.map(({ contact }) => contact.gapMm))),
      },
      verdict: "not checked",
      certainty: "common practice",
      elements: [unit.id, ...on.map(({ beamId }) => beamId).toSorted()],
      named: 1,
      at: heaviest.contact.at,
      basis:
        "Force by statics of a rigid unit, unfactored, ± not known; gaps up to 25 mm are taken to be packed (common practice, no published source). The run-down takes each force on the axis of the beam; twisting, bearing and the rails above are not judged.",
    }),
  ];
}

function cornerMarks(analysis: Analysis, unit: Unit, run: UnitRun): Mark[] {
  if (run.stand.state === "falls") return [];
  const corners = analysis.openCorners(unit.id);
  const ends = openEnds(corners);
  const onAir = corners.filter(
    ({ fitting, cutBy }) => cutBy === undefined && !ends.some((end) => fitting.startsWith(end)),
  );
  return [...railCutMarks(unit, corners), ...onAir.map((corner) => cornerMark(unit, corner))];
}

/** One opening takes the rail under both corners of an end as one cause. */
function railCutMarks(unit: Unit, corners: readonly OpenCorner[]): Mark[] {
  const marks = corners.flatMap((corner) =>
    corner.cutBy === undefined ? [] : [railCutMark(unit, corner, corner.cutBy)],
  );
  return marks.filter(({ id }, at) => marks.findIndex((mark) => mark.id === id) === at);
}

const cornerMark = (unit: Unit, { fitting, at, over, elementId, dropMm }: OpenCorner): Mark =>
  markOf({
    fact: { kind: "corner-on-air", fitting, over, dropMm: rounded(dropMm) },
    verdict: "not checked",
    certainty: "derived",
    elements: [unit.id, ...(elementId === undefined ? [] : [elementId])],
    named: 1,
    part: fitting,
    at,
    basis:
      "A unit is made to stand on its four corner fittings (ISO 1496-1, from memory). What its frame makes of three is not judged.",
  });

const railCutMark = (unit: Unit, { at, elementId }: OpenCorner, cutBy: string): Mark =>
  markOf({
    fact: { kind: "load-over-opening", forceKn: 0, railCut: true },
    verdict: "does not work",
    certainty: "common practice",
    elements: [cutBy, ...(elementId === undefined ? [] : [elementId]), unit.id],
    at,
    basis: "The opening takes the piece of top rail this corner would stand on: no way to the ground at this place.",
  });

/** What a seat leaves is told with the seat. */
const gapToldHere = ({ gapMm, seatId }: Contact): number => (seatId === undefined ? gapMm : 0);

/** One that tips bears on its last bearings alone, at whatever height the others lie. */
function rockingMarks(unit: Unit, { contacts, stand }: UnitRun): Mark[] {
  if (stand.state === "tips") return [];
  const bearing = contacts.filter(
    ({ fitting, target }) => fitting !== undefined || target.on === "fitting" || target.on === "rail",
  );
  const gaps = bearing.map(gapToldHere);
  const gapMm = gaps.length === 0 ? 0 : Math.max(...gaps) - Math.min(...gaps);
  const highest = bearing.find((contact) => gapToldHere(contact) === Math.max(...gaps));
  if (highest === undefined || gapMm <= jointTolerances.contactGap.value) return [];
  const fact: MarkFact = { kind: "rocks", gapMm: rounded(gapMm) };
  return [
    markOf({
      fact,
      verdict: "not checked",
      certainty: "memory",
      elements: [unit.id],
      at: highest.at,
      basis:
        "Difference of the gaps at its bearings: fitting on fitting 0, fitting over rail 6, rail over fitting 12.5, rail over rail 18.5 mm (ISO 1496-1, from memory).",
    }),
  ];
}

function groundMarks(unit: Unit, { contacts }: UnitRun): Mark[] {
  const onGround = contacts.filter(({ target }) => target.on === "ground");
  const first = onGround[0];
  if (first === undefined) return [];
  return [
    markOf({
      fact: { kind: "pad-missing", corners: onGround.length },
      verdict: "not checked",
      certainty: "derived",
      elements: [unit.id],
      at: first.at,
      basis: "These fittings stand on bare ground. What the ground bears is not judged.",
    }),
  ];
}
