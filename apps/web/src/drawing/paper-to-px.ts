import type { PaperRect } from "@cornerway/engine";
import type { RectPx } from "./px-path.ts";
import { toScreen, type ViewTransform } from "./view-transform.ts";

/** A rectangle on the paper of a view as px on the field. */
export function rectToPx(view: ViewTransform, { u0Mm, u1Mm, z0Mm, z1Mm }: PaperRect): RectPx {
  const { xPx, yPx } = toScreen(view, { uMm: u0Mm, vMm: z1Mm });
  return { xPx, yPx, widthPx: ((u1Mm - u0Mm) * view.pxPerM) / 1000, heightPx: ((z1Mm - z0Mm) * view.pxPerM) / 1000 };
}

export const xToPx = (view: ViewTransform, uMm: number): number => view.originXPx + (uMm * view.pxPerM) / 1000;
export const yToPx = (view: ViewTransform, vMm: number): number => view.originYPx - (vMm * view.pxPerM) / 1000;
