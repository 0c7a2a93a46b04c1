import { placeContainer, solidCorners, storeysOf } from "@cornerway/engine";
import type { PointMm, Scheme } from "@cornerway/schema";
import type { Side } from "../drawing/contract.ts";
import { project, toScreen } from "../drawing/view-transform.ts";
import type { LaidViews } from "../paper/lay-views.ts";
import type { Field } from "../paper/use-field.ts";
import type { LeaderAnchor } from "../sheet/contract.ts";

/** Points this near the front face count as on it, mm. */
const behindMm = 60;

/**
 * Where a leader ends, px of the sheet: on the elevation when the place is seen there, else on the plan when its storey
 * is the one cut; null when neither view shows it.
 */
export function markAnchor(scheme: Scheme, at: PointMm, side: Side, storey: number, views: LaidViews, field: Field): LeaderAnchor | null {
  if (isSeen(scheme, at, side)) return onSheet(toScreen(views.elevation.transform, project(side, at)), field);
  if (storeyAt(scheme, at) === storey) return onSheet(toScreen(views.plan.transform, project("plan", at)), field);
  return null;
}

function isSeen(scheme: Scheme, at: PointMm, side: Side): boolean {
  const { uMm, vMm, depthMm } = project(side, at);
  return scheme.containers.every((unit) => {
    const corners = solidCorners(placeContainer(unit)).map((corner) => project(side, corner));
    const us = corners.map((corner) => corner.uMm);
    const vs = corners.map((corner) => corner.vMm);
    const covers = uMm > Math.min(...us) && uMm < Math.max(...us) && vMm > Math.min(...vs) && vMm < Math.max(...vs);
    return !covers || depthMm <= Math.min(...corners.map((corner) => corner.depthMm)) + behindMm;
  });
}

function storeyAt(scheme: Scheme, at: PointMm): number {
  const storeys = storeysOf(scheme);
  return storeys.findLast(({ levelMm }) => levelMm <= at.zMm + behindMm)?.index ?? 0;
}

const onSheet = ({ xPx, yPx }: { xPx: number; yPx: number }, field: Field): LeaderAnchor => ({
  xPx: xPx + field.leftPx,
  yPx: yPx + field.topPx,
  end: "dot",
});
