import { parallel } from "../bearing/joint.ts";
import { fittingOutline, type TopFitting, type TopParts } from "../bearing/top-parts.ts";
import { jointTolerances } from "../catalog/joint-tolerances.ts";
import type { Unit } from "../geometry/building.ts";
import { overlapDepthMm, type PlanRect } from "../geometry/plan-rect.ts";
import { leastLapMm } from "../geometry/tolerances.ts";
import type { AlignmentKind, Landing, OnRail } from "./alignment.ts";

/** A unit below with what can be stood on at its top. */
export type Lower = { readonly unit: Unit; readonly parts: TopParts };

/** Where the corners of a unit come down; undefined where fewer than two land or one has neither fitting nor rail. */
export type Footprint = {
  readonly landings: readonly (Landing & { readonly offXMm: number; readonly offYMm: number })[];
  readonly onRails: readonly OnRail[];
};

/** Holds the four corners of a unit against the units below it. */
export function footprintOf(unit: Unit, lowers: readonly Lower[]): Footprint | undefined {
  const landings: Footprint["landings"][number][] = [];
  const onRails: OnRail[] = [];
  for (const fitting of unit.bottomFittings) {
    if (fitting.name.endsWith("-inner")) continue;
    const outline = fittingOutline(unit, fitting.localXMm, fitting.localYMm);
    const under = lowers.filter((lower) => overlapDepthMm(outline, lower.unit.outline) >= leastLapMm);
    const landed = under
      .flatMap((lower) => lower.parts.fittings.flatMap((top) => landingOn(unit, fitting, outline, lower, top) ?? []))
      .toSorted((a, b) => lengthMm(a.offXMm, a.offYMm) - lengthMm(b.offXMm, b.offYMm))[0];
    if (landed !== undefined) {
      landings.push(landed);
      continue;
    }
    const rail = under
      .flatMap(({ unit: { id }, parts }) => parts.rails.map((piece) => ({ id, ...piece })))
      .find((piece) => overlapDepthMm(outline, piece.outline) >= leastLapMm);
    if (rail === undefined) return undefined;
    onRails.push({ fitting: fitting.name, onId: rail.id, rail: rail.rail });
  }
  return landings.length < 2 ? undefined : { landings, onRails };
}

function landingOn(
  unit: Unit,
  fitting: Unit["bottomFittings"][number],
  outline: PlanRect,
  { unit: lower }: Lower,
  top: TopFitting,
): Footprint["landings"][number] | undefined {
  if (overlapDepthMm(outline, top.outline) < leastLapMm) return undefined;
  const offXMm = fitting.at.xMm - top.xMm;
  const offYMm = fitting.at.yMm - top.yMm;
  const { cos, sin, turnMdeg } = lower.frame;
  const alongMm = Math.abs(offXMm * cos + offYMm * sin);
  const acrossMm = Math.abs(offYMm * cos - offXMm * sin);
  const kind = kindOf(parallel(unit.frame.turnMdeg, turnMdeg), alongMm, acrossMm);
  return { fitting: fitting.name, onId: lower.id, onFitting: top.name, alongMm, acrossMm, kind, offXMm, offYMm };
}

function kindOf(isParallel: boolean, alongMm: number, acrossMm: number): AlignmentKind {
  const { lockAlong, lockAcross, fullBearingAlong, fullBearingAcross } = jointTolerances;
  if (isParallel && alongMm <= lockAlong.value && acrossMm <= lockAcross.value) return "lock";
  return alongMm <= fullBearingAlong.value && acrossMm <= fullBearingAcross.value
    ? "bearing without lock"
    : "made connection";
}

export const lengthMm = (x: number, y: number): number => Math.sqrt(x * x + y * y);
