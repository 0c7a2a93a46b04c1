import { gapClosure } from "../checks/deflection.ts";
import type { BoxMm, BuildingFrame, UnitBox } from "../loads/building-frame.ts";
import type { PlacedUnit } from "../model/building-model.ts";
import type { DriftBasis } from "./drift-parts.ts";
import { isEarthquake } from "./holds-needed.ts";
import { planMovement, type Plan } from "./movements.ts";
import type { SolvedRun } from "./solve-runs.ts";
import type { StrengthPart } from "./strength-part.ts";
import { unitCorners } from "./unit-corners.ts";

/** Two units side by side with a gap between them, and the direction across it, from one to the other. */
type Gap = { readonly of: string; readonly to: string; readonly gapMm: number; readonly across: Plan };

/** Units farther apart do not meet. */
const MOST_GAP_MM = 300;
/** Drawn closer they touch: what joins them has to hold, no gap is left to close. */
const TOUCH_MM = 1;

/**
 * Units side by side that could meet: both lean at once towards each other at their heads, in an earthquake by as much as
 * their systems' amplification (ASCE 7 12.12.3, from memory, asks the roots of squares; the sum is safe).
 */
export function gapParts(building: BuildingFrame, units: readonly PlacedUnit[], basis: DriftBasis): StrengthPart[] {
  const heads = new Map(units.map((unit) => [unit.id, unitCorners(unit).map(({ head }) => head)]));
  return gapsOf(building).map(({ of, to, gapMm, across }) => {
    const closed = (solved: SolvedRun): number => {
      const times = isEarthquake(solved) ? basis.cd : 1;
      const most = farthest(heads.get(of) ?? [], across, solved) + farthest(heads.get(to) ?? [], back(across), solved);
      return times * most;
    };
    const place = `gap of ${Math.round(gapMm)} mm to ${to}`;
    return {
      id: `${of} building ${place}`,
      ownerId: of,
      element: "building",
      place,
      level: "strength",
      use: (solved) => closed(solved) / gapMm,
      decide: (solved) => ({
        limitState: "gap closure",
        utilisation: closed(solved) / gapMm,
        checks: () => [gapClosure("building", closed(solved), gapMm)],
      }),
    };
  });
}

const back = ([x, y]: Plan): Plan => [-x, -y];

/** How far the head that moves most goes this way; none goes back. */
const farthest = (heads: readonly string[], [x, y]: Plan, solved: SolvedRun): number =>
  heads.reduce((most, head) => {
    const [mx, my] = planMovement(head, solved);
    return Math.max(most, mx * x + my * y);
  }, 0);

function gapsOf({ axes, boxes }: BuildingFrame): Gap[] {
  const along: Plan = [axes.cos, axes.sin];
  const across: Plan = [-axes.sin, axes.cos];
  return boxes.flatMap((one) =>
    boxes.flatMap((other): Gap[] => {
      if (other === one || !sameHeight(one, other)) return [];
      const [x, y] = [other.x0 - one.x1, other.y0 - one.y1];
      if (isGap(x) && lap(one.y0, one.y1, other.y0, other.y1)) return [gapBetween(one, other, x, along)];
      if (isGap(y) && lap(one.x0, one.x1, other.x0, other.x1)) return [gapBetween(one, other, y, across)];
      return [];
    }),
  );
}

const gapBetween = (one: UnitBox, other: UnitBox, gapMm: number, across: Plan): Gap => {
  return { of: one.id, to: other.id, gapMm, across };
};

const isGap = (mm: number): boolean => mm >= TOUCH_MM && mm <= MOST_GAP_MM;
const sameHeight = (a: BoxMm, b: BoxMm): boolean => lap(a.z0, a.z1, b.z0, b.z1);
const lap = (a0: number, a1: number, b0: number, b1: number): boolean => Math.min(a1, b1) > Math.max(a0, b0);
