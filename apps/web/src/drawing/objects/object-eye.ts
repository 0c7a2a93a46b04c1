import type { Side } from "@cornerway/engine";
import type { PointMm } from "@cornerway/schema";
import { project, toScreen, type ScreenPoint, type ViewTransform } from "../view-transform.ts";

/** How a view looks at added things. */
export type ObjectEye = {
  kind: "plan" | "elevation" | "isometric";
  pxPerM: number;
  toPx: (at: PointMm) => ScreenPoint;
};

export const elevationEye = (side: Side, view: ViewTransform): ObjectEye => ({
  kind: "elevation",
  pxPerM: view.pxPerM,
  toPx: (at) => toScreen(view, project(side, at)),
});

export const planEye = (view: ViewTransform): ObjectEye => ({
  kind: "plan",
  pxPerM: view.pxPerM,
  toPx: (at) => toScreen(view, project("plan", at)),
});
