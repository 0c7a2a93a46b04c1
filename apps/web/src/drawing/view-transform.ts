import { unproject, type Projection, type ViewPoint } from "@cornerway/engine";
import type { PointMm } from "@cornerway/schema";

export { project, unproject } from "@cornerway/engine";
export type { Projection, ViewPoint } from "@cornerway/engine";

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

/** Screen point on a plane square to the view at `depthMm`, as a site point. */
export const screenToSite = (view: ViewTransform, projection: Projection, at: ScreenPoint, depthMm: number): PointMm =>
  unproject(projection, fromScreen(view, at), depthMm);
