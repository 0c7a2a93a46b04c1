import { amplificationOf, mostAmplification } from "../codes/steel/amplification.ts";
import type { CheckBasis } from "../checks/check-basis.ts";
import type { Check } from "../checks/check.ts";
import type { PlacedUnit } from "../model/building-model.ts";
import { SOLUTION_ACCURACY } from "../numerics/tolerances.ts";
import { bearingForce, type ModelledBearing } from "./modelled-bearings.ts";
import type { SolvedRun } from "./solve-runs.ts";
import { leanOf, lengthOf, type Plan } from "./movements.ts";
import { unitCorners } from "./unit-corners.ts";

/** How much one unit leans under all it carries, along the axis where it leans most. */
export type Lean = { readonly unitId: string; readonly run: string; readonly check: Extract<Check, { ok: true }> };

/**
 * B₂ of every unit as a storey of its own: units that are not tied lean each by itself, and the softest of those that are
 * stands for them. Notional loads push; what they add to the level forces under the unit is its shear, what they add to the
 * lean of its worst corner, with its rocking and turning, is its drift. First-order forces do not change where every
 * stiffness is reduced alike, so direct analysis' reduction enters here.
 */
export function leansOf(
  units: readonly PlacedUnit[],
  bearings: readonly ModelledBearing[],
  upright: SolvedRun,
  pushed: readonly SolvedRun[],
  basis: CheckBasis,
): Lean[] {
  return units.flatMap((unit) => {
    const own = bearings.filter(({ ownerId }) => ownerId === unit.id);
    const leans = pushed.flatMap((push) => leanUnder(push, upright, unit, own, basis));
    const [first, ...others] = leans;
    if (first === undefined) return [];
    return [others.reduce((most, next) => (next.check.utilisation > most.check.utilisation ? next : most), first)];
  });
}

/** What stands for the whole building: the greatest B₂, held at the most that factors may stand for. */
export const swayFactor = (leans: readonly Lean[]): number =>
  Math.min(mostAmplification, Math.max(1, ...leans.map(({ check }) => amplificationOf(check.working))));

function leanUnder(
  push: SolvedRun,
  upright: SolvedRun,
  unit: PlacedUnit,
  own: readonly ModelledBearing[],
  basis: CheckBasis,
): Lean[] {
  const shearN = lengthOf(difference(levelForce(own, push), levelForce(own, upright)));
  const verticalN = own.reduce((sum, bearing) => sum + Math.max(bearingForce(bearing, upright)[2], 0), 0);
  const corners = unitCorners(unit).map((corner) => {
    const driftMm = lengthOf(difference(leanOf(corner, push), leanOf(corner, upright)));
    return { driftMm, heightMm: corner.heightMm };
  });
  const worst = corners.reduce((most, next) => (next.driftMm > most.driftMm ? next : most));
  // less than the solution is accurate to is no push and no lean
  const pushed = shearN > SOLUTION_ACCURACY * verticalN && worst.driftMm > SOLUTION_ACCURACY * worst.heightMm;
  if (!pushed) return [];
  const check = basis.lean({ verticalN, shearN, ...worst });
  return check.ok ? [{ unitId: unit.id, run: push.run.id, check }] : [];
}

const levelForce = (own: readonly ModelledBearing[], solved: SolvedRun): Plan =>
  own.reduce<Plan>(
    ([x, y], bearing) => {
      const [fx, fy] = bearingForce(bearing, solved);
      return [x + fx, y + fy];
    },
    [0, 0],
  );

const difference = (a: Plan, b: Plan): Plan => [a[0] - b[0], a[1] - b[1]];
