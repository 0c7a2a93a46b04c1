import { elevationModel, storeysOf, type EyePlace } from "@cornerway/engine";
import type { PointMm, Scheme } from "@cornerway/schema";
import type { Side } from "../drawing/contract.ts";
import { elevationAnchor, type LeaderTarget } from "../drawing/leaders/elevation-anchor.ts";
import { isometricAnchor } from "../drawing/leaders/isometric-anchor.ts";
import { pictureOf } from "../drawing/isometric/picture-of.ts";
import { project, toScreen, type ScreenPoint } from "../drawing/view-transform.ts";
import type { LaidView, LaidViews } from "../paper/lay-views.ts";
import { drawnRect, isWithin } from "../paper/lens.ts";
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
  /** Where the picture of the whole is seen from. */
  picture: EyePlace;
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
  picture,
}: ViewsOnField): (target: LeaderTarget) => LeaderAnchor | null {
  const elevation = elevationModel(scheme, side);
  let drawn: ReturnType<typeof pictureOf> | undefined;
  /** Ordering its solids is slow, and most places are seen on the elevation. */
  const solid = () => (drawn ??= pictureOf(scheme, picture));
  return (target) => {
    const found =
      inSight(views.elevation, elevationAnchor(target, elevation, views.elevation.transform)) ??
      (isometric && !views.oneView
        ? inSight(views.isometric, isometricAnchor(target.elementId, solid(), views.isometric.transform))
        : null) ??
      (!views.oneView && storeyAt(scheme, target.at) === storey ? inSight(views.plan, onPlan(target.at, views)) : null);
    return found === null ? null : { ...found, xPx: found.xPx + field.leftPx, yPx: found.yPx + field.topPx };
  };
}

/** A place that a view looked into more closely has lost from sight has no leader there. */
const inSight = <A extends ScreenPoint>({ rect }: LaidView, anchor: A | null): A | null =>
  anchor !== null && isWithin(drawnRect(rect), anchor) ? anchor : null;

const onPlan = (at: PointMm, { plan }: LaidViews) => ({
  ...toScreen(plan.transform, project("plan", at)),
  end: "dot" as const,
});

/** A place this little under a level still belongs to it, mm. */
const underLevelMm = 60;

const storeyAt = (scheme: Scheme, at: PointMm): number =>
  storeysOf(scheme).findLast(({ levelMm }) => levelMm <= at.zMm + underLevelMm)?.index ?? 0;
