import { parallel } from "../bearing/joint.ts";
import { jointTolerances } from "../catalog/joint-tolerances.ts";
import type { TopFitting } from "../bearing/top-parts.ts";
import type { Unit } from "../geometry/building.ts";
import type { PlacedFitting } from "../geometry/place.ts";
import { overlapDepthMm } from "../geometry/plan-rect.ts";
import { touchMm } from "../geometry/tolerances.ts";
import type { Lower } from "./landings.ts";

/** The selected unit moved onto a fitting of one unit below, and another moved so that a second fitting lands on it. */
export type GapMove = {
  readonly dxMm: number;
  readonly dyMm: number;
  readonly stays: Lower;
  readonly moves: Lower;
  readonly moveXMm: number;
  readonly moveYMm: number;
  readonly nowMm: number;
  readonly neededMm: number;
};

/** Every gap between two parallel units below at which two corners of the unit land, one on either. */
export const gapMoves = (unit: Unit, lowers: readonly Lower[]): GapMove[] =>
  lowers.flatMap((stays) =>
    lowers.flatMap((moves) => {
      const apart = stays.unit.id === moves.unit.id ? undefined : apartOf(stays.unit, moves.unit);
      return apart === undefined ? [] : pairMoves(unit, stays, moves, apart);
    }),
  );

/** Two parallel units side by side or end to end: the direction from one to the other and the clear gap. */
type Apart = { readonly nx: number; readonly ny: number; readonly nowMm: number };

function apartOf(one: Unit, other: Unit): Apart | undefined {
  if (!parallel(one.frame.turnMdeg, other.frame.turnMdeg)) return undefined;
  const { cos, sin } = one.frame;
  const dx = other.frame.xMm - one.frame.xMm;
  const dy = other.frame.yMm - one.frame.yMm;
  const along = dx * cos + dy * sin;
  const across = dy * cos - dx * sin;
  const clearAlong = Math.abs(along) - (one.dimensions.lengthMm + other.dimensions.lengthMm) / 2;
  const clearAcross = Math.abs(across) - (one.dimensions.widthMm + other.dimensions.widthMm) / 2;
  if (clearAcross > -touchMm && clearAlong < 0) {
    const sign = across < 0 ? -1 : 1;
    return { nx: -sin * sign, ny: cos * sign, nowMm: clearAcross };
  }
  if (clearAlong > -touchMm && clearAcross < 0) {
    const sign = along < 0 ? -1 : 1;
    return { nx: cos * sign, ny: sin * sign, nowMm: clearAlong };
  }
  return undefined;
}

function pairMoves(unit: Unit, stays: Lower, moves: Lower, apart: Apart): GapMove[] {
  const corners = unit.bottomFittings.filter(({ name }) => !name.endsWith("-inner"));
  const spans = corners.flatMap((from) => corners.filter(({ name }) => name !== from.name).map((to) => ({ from, to })));
  const tops = stays.parts.fittings.flatMap((a) => moves.parts.fittings.map((b) => ({ a, b })));
  return spans.flatMap((span) => tops.flatMap(({ a, b }) => gapMove(span, stays, moves, a, b, apart) ?? []));
}

/** The first corner of a span put on a fitting of the unit that stays, the other unit moved under the second. */
function gapMove(
  { from, to }: { readonly from: PlacedFitting; readonly to: PlacedFitting },
  stays: Lower,
  moves: Lower,
  a: TopFitting,
  b: TopFitting,
  { nx, ny, nowMm }: Apart,
): GapMove | undefined {
  const x = to.at.xMm - from.at.xMm - (b.xMm - a.xMm);
  const y = to.at.yMm - from.at.yMm - (b.yMm - a.yMm);
  const apartMm = x * nx + y * ny;
  const asideMm = Math.abs(y * nx - x * ny);
  const neededMm = nowMm + apartMm;
  if (asideMm > jointTolerances.lockAcross.value || neededMm < -touchMm || Math.abs(apartMm) <= touchMm)
    return undefined;
  const move = { moveXMm: apartMm * nx, moveYMm: apartMm * ny };
  return { dxMm: a.xMm - from.at.xMm, dyMm: a.yMm - from.at.yMm, stays, moves, ...move, nowMm, neededMm };
}

/** Whether a unit shares a place with any other. */
export const collides = (unit: Unit, others: readonly Unit[]): boolean =>
  others.some(
    (other) =>
      other.id !== unit.id &&
      Math.min(unit.topZMm, other.topZMm) - Math.max(unit.baseZMm, other.baseZMm) > touchMm &&
      overlapDepthMm(unit.outline, other.outline) > touchMm,
  );
