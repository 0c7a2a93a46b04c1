import type { Mark } from "@cornerway/schema";
import { seatLeftMm, type SeatPlace } from "../bearing/seat-place.ts";
import { jointTolerances } from "../catalog/joint-tolerances.ts";
import { touchMm } from "../geometry/tolerances.ts";
import type { Analysis } from "../load-path/analysis.ts";
import { rounded } from "../units.ts";
import { markOf } from "./mark-of.ts";

/** What is to be said of one seat: that it bears nothing, that its packing does not fill the gap, that it overhangs. */
export function seatMarks({ carrying }: Analysis, place: SeatPlace): Mark[] {
  const lacks = lacking(place, carrying);
  if (lacks !== undefined) return [withoutBearing(place, lacks)];
  return [...packingMarks(place), ...offRailMarks(place)];
}

type Lacks = Extract<Mark["fact"], { kind: "seat-without-bearing" }>["lacks"];

function lacking(place: SeatPlace, carrying: ReadonlySet<string>): Lacks | undefined {
  const { lower, railCut, upper } = place;
  const onNothing = lower?.target.on === "beam" && !carrying.has(lower.target.elementId);
  if (railCut) return "a whole rail under it";
  if (lower === undefined || onNothing) return upper === undefined ? "both" : "a member under it";
  return upper === undefined || seatLeftMm(place) === undefined ? "a member over it" : undefined;
}

const withoutBearing = (place: SeatPlace, lacks: Lacks): Mark =>
  markOf({
    fact: { kind: "seat-without-bearing", lacks },
    verdict: "does not work",
    certainty: "common practice",
    elements: [place.seat.id, place.seat.upperId, place.seat.lowerId],
    named: 1,
    at: placeOf(place),
    basis:
      "Geometry: a seat lies on a whole top rail, header, top fitting or beam that leads to the ground, and under a bottom fitting or bottom side rail, lapping each by 25 mm (common practice, no published source). Member sizes of the generic specification.",
  });

const placeOf = ({ xMm, yMm, lower }: SeatPlace): Mark["at"] => ({ xMm, yMm, zMm: lower?.topZMm ?? 0 });

function packingMarks(place: SeatPlace): Mark[] {
  const left = seatLeftMm(place);
  const { seat } = place;
  if (left === undefined || Math.abs(left.leftMm) <= jointTolerances.contactGap.value) return [];
  return [
    markOf({
      fact: {
        kind: "seat-packing",
        gapMm: rounded(left.gapMm),
        packingMm: rounded(left.gapMm - left.leftMm),
        leftMm: rounded(left.leftMm),
      },
      verdict: "not checked",
      certainty: "memory",
      elements: [seat.id, seat.upperId, seat.lowerId],
      named: 1,
      at: placeOf(place),
      basis:
        "Geometry: gap less packing, level error drawn included; up to 2 mm is closed on site (common practice, no published source). Gaps of stacked units from ISO 1496-1, from memory.",
    }),
  ];
}

function offRailMarks(place: SeatPlace): Mark[] {
  const { seat, lower } = place;
  if (lower === undefined) return [];
  const pastMm = lower.offMm + seat.widthUm / 2000 - lower.halfMm;
  if (pastMm <= touchMm) return [];
  return [
    markOf({
      fact: { kind: "seat-off-rail", offMm: rounded(lower.offMm), pastMm: rounded(pastMm) },
      verdict: "not checked",
      certainty: "common practice",
      elements: [seat.id, seat.lowerId],
      named: 1,
      at: placeOf(place),
      basis:
        "Geometry: plate of the seat against the width of what it lies on (generic specification, sections of the catalogue). Twisting of the member and bending of the plate not judged.",
    }),
  ];
}
