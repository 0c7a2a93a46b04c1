import type { Opening, Scheme } from "@cornerway/schema";
import { buildingOf, type Unit } from "../geometry/building.ts";
import { openingRect, rectsLap } from "../fabric/opening-rect.ts";
import { protectedMembers } from "../fabric/protected-members.ts";
import { touchMm } from "../geometry/tolerances.ts";
import { bearingForce, type ModelledBearing } from "../strength/modelled-bearings.ts";
import type { SolvedRun } from "../strength/solve-runs.ts";
import type { UnitPoint } from "../model/unit-point.ts";
import type { ChartAnswer, ChartFace, ChartRequest, ChartSide, SideBearing } from "./chart.ts";
import { triedId, triedOpening, without } from "./trial-opening.ts";

/** The side of a chart in its real place: what must stay, what is cut already, what comes down on it. */
export function chartSide(
  unit: Unit,
  request: ChartRequest,
  bearings: readonly ModelledBearing[],
  solved: readonly SolvedRun[],
): ChartSide {
  const { dimensions } = unit;
  const { face } = request;
  const outline = dimensions.face(face);
  return {
    lengthMm: outline.u1,
    heightMm: outline.v1,
    sheet: dimensions.sheetZone(face),
    keepZones: protectedMembers(dimensions, face).map(({ member, strip }) => ({ member, ...strip })),
    others: unit.openings.filter((opening) => opening.face === face && opening.id !== triedId(request)),
    bearings: bearings.flatMap((bearing) => sideBearing(bearing, unit, face, solved)),
  };
}

/** The side before anything is solved: what bears on it is not known yet. Undefined where the container does not stand. */
export function sideAsDrawn(scheme: Scheme, request: ChartRequest): ChartSide | undefined {
  const unit = buildingOf(without(scheme, request)).unitById.get(request.containerId);
  return unit && chartSide(unit, request, [], []);
}

function sideBearing(
  bearing: ModelledBearing,
  unit: Unit,
  face: ChartFace,
  solved: readonly SolvedRun[],
): SideBearing[] {
  const { above, below } = bearing.planned;
  const forceN = solved.reduce((most, run) => Math.max(most, bearingForce(bearing, run)[2]), 0);
  if ("point" in below && below.point.unitId === unit.id) {
    const uMm = onSide(below.point, unit, face);
    const elementId = "post" in above ? above.post : "beam" in above ? above.beam : above.unitId;
    return uMm === undefined ? [] : [{ at: "above", uMm, elementId, forceN }];
  }
  if ("unitId" in above && above.unitId === unit.id) {
    const uMm = onSide(above, unit, face);
    const elementId = underName(below);
    return uMm === undefined ? [] : [{ at: "below", uMm, elementId, forceN }];
  }
  return [];
}

function underName(below: ModelledBearing["planned"]["below"]): string {
  if ("post" in below) return below.post;
  if ("beam" in below) return below.beam;
  return "ground" in below ? below.ground : below.point.unitId;
}

/** Where a bearing point lies along a face, mm from its origin; undefined where it is on another. */
function onSide(point: UnitPoint, { dimensions }: Unit, face: ChartFace): number | undefined {
  const across = face === "front";
  const [outer, holes] = across
    ? [dimensions.widthMm, dimensions.holeSpacingCrosswiseMm]
    : [dimensions.lengthMm, dimensions.holeSpacingLengthwiseMm];
  const edge = (outer - holes) / 2;
  if ("seat" in point) return point.seat.side === face ? point.seat.u + edge : undefined;
  const { end, side } = point.corner;
  if (across) return end !== "front" ? undefined : side === "right" ? edge : outer - edge;
  return side !== face ? undefined : end === "front" ? edge : outer - edge;
}

/** What forbids an opening before anything is solved: a protected member, another opening. */
export function forbids(
  unit: Unit,
  request: ChartRequest,
  others: readonly Opening[],
  at: Place,
): ChartAnswer | undefined {
  const rect = openingRect(triedOpening(request, at.centreMm, at.widthMm));
  const cut = protectedMembers(unit.dimensions, request.face).find(({ strip }) => rectsLap(strip, rect, touchMm));
  if (cut !== undefined) return { verdict: "does not work", why: { kind: "member cut", member: cut.member } };
  const met = others.find((opening) => opening.face === request.face && rectsLap(openingRect(opening), rect, touchMm));
  return met && { verdict: "does not work", why: { kind: "meets opening", openingId: met.id } };
}

/** Centre and width of an opening along a face, mm. */
export type Place = { readonly centreMm: number; readonly widthMm: number };
