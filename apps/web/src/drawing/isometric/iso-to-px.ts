import type { IsoPoint } from "@cornerway/engine";
import type { ScreenPoint, ViewTransform } from "../view-transform.ts";

/** A paper point as px: the middle of the picture stands at the transform's origin. */
export const isoToPx = (view: ViewTransform, middle: IsoPoint, { rightMm, downMm }: IsoPoint): ScreenPoint => ({
  xPx: view.originXPx + ((rightMm - middle.rightMm) * view.pxPerM) / 1000,
  yPx: view.originYPx + ((downMm - middle.downMm) * view.pxPerM) / 1000,
});
