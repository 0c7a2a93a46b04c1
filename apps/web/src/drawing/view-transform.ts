import type { PointMm } from "@cornerway/schema";
import type { Side } from "./side.ts";

/** A point on the paper of one view, mm at full size: `uMm` to the right, `vMm` up. */
export type ViewPoint = { uMm: number; vMm: number };

/** A point on the screen, px from the top left of the field. */
export type ScreenPoint = { xPx: number; yPx: number };

/** Where a view stands on the field: the px place of view point (0, 0) and the px that show one metre. */
export type ViewTransform = { originXPx: number; originYPx: number; pxPerM: number };

export const toScreen = (view: ViewTransform, { uMm, vMm }: ViewPoint): ScreenPoint => ({
  xPx: view.originXPx + (uMm * view.pxPerM) / 1000,
  yPx: view.originYPx - (vMm * view.pxPerM) / 1000,
});

/** The inverse of `toScreen`. */
export const fromScreen = (view: ViewTransform, { xPx, yPx }: ScreenPoint): ViewPoint => ({
  uMm: ((xPx - view.originXPx) * 1000) / view.pxPerM,
  vMm: ((view.originYPx - yPx) * 1000) / view.pxPerM,
});

export type Projection = Side | "plan";

/**
 * Site point as a view sees it: `u` right, `v` up, `depthMm` away from the eye. Elevations look square at a side from
 * outside; the plan looks down with site +y up.
 */
export function project(projection: Projection, at: PointMm): ViewPoint & { depthMm: number } {
  switch (projection) {
    case "south":
      return { uMm: at.xMm, vMm: at.zMm, depthMm: at.yMm };
    case "north":
      return { uMm: -at.xMm, vMm: at.zMm, depthMm: -at.yMm };
    case "east":
      return { uMm: at.yMm, vMm: at.zMm, depthMm: -at.xMm };
    case "west":
      return { uMm: -at.yMm, vMm: at.zMm, depthMm: at.xMm };
    case "plan":
      return { uMm: at.xMm, vMm: at.yMm, depthMm: -at.zMm };
  }
}

/** The inverse of `project`. */
export function unproject(projection: Projection, { uMm, vMm }: ViewPoint, depthMm: number): PointMm {
  switch (projection) {
    case "south":
      return { xMm: uMm, yMm: depthMm, zMm: vMm };
    case "north":
      return { xMm: -uMm, yMm: -depthMm, zMm: vMm };
    case "east":
      return { xMm: -depthMm, yMm: uMm, zMm: vMm };
    case "west":
      return { xMm: depthMm, yMm: -uMm, zMm: vMm };
    case "plan":
      return { xMm: uMm, yMm: vMm, zMm: -depthMm };
  }
}

/** Screen point on a plane square to the view at `depthMm`, as a site point. */
export const screenToSite = (view: ViewTransform, projection: Projection, at: ScreenPoint, depthMm: number): PointMm =>
  unproject(projection, fromScreen(view, at), depthMm);
