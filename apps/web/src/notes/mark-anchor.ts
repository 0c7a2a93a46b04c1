import { storeysOf, elevationModel, isometricModel } from "@cornerway/engine";
import type { PointMm, Scheme } from "@cornerway/schema";
import type { Side } from "../drawing/contract.ts";
import { elevationAnchor, type LeaderTarget } from "../drawing/leaders/elevation-anchor.ts";
import { isometricAnchor } from "../drawing/leaders/isometric-anchor.ts";
import { project, toScreen } from "../drawing/view-transform.ts";
import type { LaidViews } from "../paper/lay-views.ts";
import type { Field } from "../paper/use-field.ts";
import type { LeaderAnchor } from "../sheet/contract.ts";

/** The views as laid on the field; `isometric` false where something else is laid in its place. */
export type ViewsOnField = {
  scheme: Scheme;
  side: Side;
  storey: number;
  views: LaidViews;
  field: Field;
  isometric: boolean;
};

/**
 * Finds where a leader ends, px of the sheet: on the elevation when that side shows the place, else on the isometric,
 * else on the plan when its storey is the one cut; null when no view shows it.
 */
export function anchorFinder({
  scheme,
  side,
  storey,
  views,
  field,
  isometric,
}: ViewsOnField): (target: LeaderTarget) => LeaderAnchor | null {
  const elevation = elevationModel(scheme, side);
  const solid = isometricModel(scheme);
  return (target) => {
    const found =
      elevationAnchor(target, elevation, views.elevation.transform) ??
      (isometric && !views.oneView ? isometricAnchor(target.elementId, solid, views.isometric.transform) : null) ??
      (!views.oneView && storeyAt(scheme, target.at) === storey ? onPlan(target.at, views) : null);
    return found === null ? null : { ...found, xPx: found.xPx + field.leftPx, yPx: found.yPx + field.topPx };
  };
}

const onPlan = (at: PointMm, { plan }: LaidViews) => ({
  ...toScreen(plan.transform, project("plan", at)),
  end: "dot" as const,
});

/** A place this little under a level still belongs to it, mm. */
const underLevelMm = 60;

const storeyAt = (scheme: Scheme, at: PointMm): number =>
  storeysOf(scheme).findLast(({ levelMm }) => levelMm <= at.zMm + underLevelMm)?.index ?? 0;
