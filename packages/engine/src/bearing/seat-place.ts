import type { FittingName, PointMm, Seat } from "@cornerway/schema";
import type { Rail } from "../fabric/fabric-of.ts";
import type { Unit } from "../geometry/building.ts";
import { toLocal } from "../geometry/place.ts";
import { alongBeam, beamTopMm, type PlacedBeam } from "../geometry/placed-beam.ts";
import { holdsPoint, overlapDepthMm, type PlanRect } from "../geometry/plan-rect.ts";
import { leastLapMm, touchMm } from "../geometry/tolerances.ts";
import type { Target } from "./contact.ts";
import { alongRailMm } from "./post-footing.ts";
import { railLine } from "./rail-contacts.ts";
import type { Structure } from "./structure.ts";
import { fittingOutline, railOutline } from "./top-parts.ts";

/** The member a seat lies on. */
export type SeatLower = {
  readonly target: Extract<Target, { on: "fitting" | "rail" | "beam" }>;
  readonly topZMm: number;
  /** Its top in plan; the first side runs along it. */
  readonly outline: PlanRect;
  /** How far the middle of the plate is off the member's, across it. */
  readonly offMm: number;
  /** Half of the member's width, across. */
  readonly halfMm: number;
};

/** The part of the upper unit that comes down on a seat. */
export type SeatUpper = {
  readonly side: "left" | "right";
  /** Absent under a rail. */
  readonly fitting?: FittingName;
  readonly undersideZMm: number;
  /** In the upper unit's own plan. */
  readonly localXMm: number;
  readonly localYMm: number;
};

/** A seat where it is drawn: the middle of its plate in plan, what it lies on and what is over it, where they are there. */
export type SeatPlace = {
  readonly seat: Seat;
  readonly xMm: number;
  readonly yMm: number;
  readonly lower: SeatLower | undefined;
  /** A cut has taken the rail it would lie on. */
  readonly railCut: boolean;
  readonly upper: SeatUpper | undefined;
};

/** What a seat lies on and what comes down on it. */
export function seatPlace(structure: Structure, seat: Seat): SeatPlace {
  const { unitById, beamById } = structure.building;
  const at = { xMm: seat.xUm / 1000, yMm: seat.yUm / 1000, zMm: 0 };
  const beam = beamById.get(seat.lowerId);
  const below = unitById.get(seat.lowerId);
  const on = below === undefined ? undefined : onUnit(structure, below, seat, at);
  const lower = beam === undefined ? on?.lower : onBeamTop(beam, seat, at);
  const upperUnit = unitById.get(seat.upperId);
  const plate = lower === undefined ? squareAt(seat, at) : plateOf(seat, at, lower.outline);
  const upper = upperUnit === undefined ? undefined : upperPart(upperUnit, plate, at);
  return { seat, xMm: at.xMm, yMm: at.yMm, lower, railCut: on?.railCut ?? false, upper };
}

/** The plate in plan: its length along the member it lies on. */
function plateOf({ lengthUm, widthUm }: Seat, { xMm, yMm }: PointMm, { ux, uy }: PlanRect): PlanRect {
  return { cxMm: xMm, cyMm: yMm, ux, uy, halfUMm: lengthUm / 2000, halfVMm: widthUm / 2000 };
}

const squareAt = (seat: Seat, at: PointMm): PlanRect =>
  plateOf({ ...seat, lengthUm: seat.widthUm }, at, { cxMm: 0, cyMm: 0, ux: 1, uy: 0, halfUMm: 0, halfVMm: 0 });

function onBeamTop(beam: PlacedBeam, seat: Seat, at: PointMm): SeatLower | undefined {
  if (overlapDepthMm(beam.outline, plateOf(seat, at, beam.outline)) < leastLapMm) return undefined;
  const { uMm } = alongBeam(beam, at);
  return lowerOn({ on: "beam", elementId: beam.id, uMm }, beamTopMm(beam, uMm), beam.outline, at);
}

const rails: readonly Rail[] = ["left", "right", "front", "door"];

/** The top fitting under the middle of the plate, else the top rail or header it laps most. */
function onUnit(
  { fabric, topParts }: Structure,
  below: Unit,
  seat: Seat,
  at: PointMm,
): { lower: SeatLower | undefined; railCut: boolean } {
  const parts = topParts(below.id);
  const fitting = parts.fittings.find(({ outline }) => holdsPoint(outline, at.xMm, at.yMm));
  if (fitting !== undefined) {
    const target = { on: "fitting", elementId: below.id, fitting: fitting.name } as const;
    return { lower: lowerOn(target, parts.fittingTopZMm, fitting.outline, at), railCut: false };
  }
  const lapped = rails
    .map((rail) => ({ rail, strip: lengthwise(railOutline(below, rail, 0, railLengthMm(below, rail))) }))
    .map(({ rail, strip }) => ({ rail, strip, lapMm: overlapDepthMm(strip, plateOf(seat, at, strip)) }))
    .filter(({ lapMm }) => lapMm >= leastLapMm)
    .toSorted((a, b) => b.lapMm - a.lapMm)[0];
  if (lapped === undefined) return { lower: undefined, railCut: false };
  const { rail, strip } = lapped;
  const uMm = alongRailMm(below, rail, at);
  const isWhole = fabric(below.id).topRails[rail].some(({ u0, u1 }) => u0 <= uMm && uMm <= u1);
  if (!isWhole) return { lower: undefined, railCut: true };
  const target = { on: "rail", elementId: below.id, rail, uMm } as const;
  return { lower: lowerOn(target, parts.railTopZMm, strip, at), railCut: false };
}

function lowerOn(target: SeatLower["target"], topZMm: number, outline: PlanRect, at: PointMm): SeatLower {
  const { cxMm, cyMm, ux, uy, halfVMm } = outline;
  const offMm = Math.abs((at.yMm - cyMm) * ux - (at.xMm - cxMm) * uy);
  return { target, topZMm, outline, offMm, halfMm: halfVMm };
}

const railLengthMm = ({ dimensions }: Unit, rail: Rail): number =>
  rail === "left" || rail === "right" ? dimensions.lengthMm : dimensions.widthMm;

/** A strip with its first side along it. */
const lengthwise = (rect: PlanRect): PlanRect =>
  rect.halfUMm >= rect.halfVMm
    ? rect
    : { ...rect, ux: -rect.uy, uy: rect.ux, halfUMm: rect.halfVMm, halfVMm: rect.halfUMm };

/** The bottom fitting over the plate, else the bottom side rail. */
function upperPart(unit: Unit, plate: PlanRect, at: PointMm): SeatUpper | undefined {
  const fitting = unit.bottomFittings.find(
    ({ localXMm, localYMm }) => overlapDepthMm(fittingOutline(unit, localXMm, localYMm), plate) >= leastLapMm,
  );
  if (fitting !== undefined)
    return {
      side: fitting.localYMm > 0 ? "left" : "right",
      fitting: fitting.name,
      undersideZMm: unit.baseZMm,
      localXMm: fitting.localXMm,
      localYMm: fitting.localYMm,
    };
  for (const side of ["left", "right"] as const) {
    const line = railLine(unit, side);
    if (overlapDepthMm(line.strip, plate) < leastLapMm) continue;
    const { xMm } = toLocal(unit.frame, at);
    const localXMm = Math.max(-line.halfLengthMm, Math.min(line.halfLengthMm, xMm));
    return { side, undersideZMm: line.undersideZMm, localXMm, localYMm: line.yMm };
  }
  return undefined;
}

/** How much of the gap its packing leaves, mm; undefined where it does not bear. Its own level error counts. */
export function seatLeftMm({ seat, lower, upper }: SeatPlace): { gapMm: number; leftMm: number } | undefined {
  if (lower === undefined || upper === undefined) return undefined;
  const gapMm = upper.undersideZMm - lower.topZMm;
  if (gapMm < -touchMm) return undefined;
  return { gapMm, leftMm: gapMm - (seat.packingUm + (seat.levelErrorUm ?? 0)) / 1000 };
}
