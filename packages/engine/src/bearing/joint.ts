import type { Bearing, MarkFact } from "@cornerway/schema";
import { jointTolerances } from "../catalog/joint-tolerances.ts";
import type { Unit } from "../geometry/building.ts";

type Why = Extract<MarkFact, { kind: "made-connection" }>["why"];

/** Which joint serves between two fittings, and why a stock lock does not, where it does not. */
export type FittingJoint = { readonly joint: Bearing["joint"]; readonly why?: Why };

/**
 * A stock lock needs parallel apertures (0° or 180°) and hole centres within its play; short of that the corner needs
 * a made connection. Offsets are measured along and across the lower unit, mm.
 */
export function fittingJoint(upper: Unit, lower: Unit, offsetXMm: number, offsetYMm: number): FittingJoint {
  const { cos, sin, turnMdeg } = lower.frame;
  const alongMm = Math.abs(offsetXMm * cos + offsetYMm * sin);
  const acrossMm = Math.abs(offsetYMm * cos - offsetXMm * sin);
  if (!parallel(upper.frame.turnMdeg, turnMdeg)) return { joint: "made connection", why: "apertures cross" };
  if (alongMm <= jointTolerances.lockAlong.value && acrossMm <= jointTolerances.lockAcross.value)
    return { joint: "lock" };
  const full = alongMm <= jointTolerances.fullBearingAlong.value && acrossMm <= jointTolerances.fullBearingAcross.value;
  return { joint: "made connection", why: full ? "hole centres apart" : "bears off the corner" };
}

/** Whether two units lie along the same line, either way round, within the turn a lock allows. */
export function parallel(oneMdeg: number, otherMdeg: number): boolean {
  const apart = (((oneMdeg - otherMdeg) % 180_000) + 180_000) % 180_000;
  return Math.min(apart, 180_000 - apart) <= jointTolerances.lockTurn.value * 1000;
}
