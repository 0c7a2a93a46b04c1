import type { PathStroke } from "@cornerway/engine";
import { figuresIn, type UnitSystem } from "@cornerway/schema";
import { toScreen, type ViewTransform } from "../view-transform.ts";
import type { PenRun } from "./ruling-pen.ts";
import { strokeWidthPx } from "./stroke-width.ts";

/** Length of the stub drawn for a seat, px. */
const stubPx = 15;

/** Height of the long break over the foot of a post, px. */
export const breakAboveFootPx = 15;

/** Where the pen runs for a stroke, px of the field. Its widths are the forces at its two ends; uplift counts as force. */
export function strokeRun({ stretch, from, to, stub }: PathStroke, view: ViewTransform): PenRun {
  const head = toScreen(view, from);
  const foot = toScreen(view, to);
  return {
    from: stub ? foot : head,
    to: stub ? { xPx: foot.xPx, yPx: foot.yPx + stubPx } : foot,
    widthFromPx: strokeWidthPx(Math.abs(stretch.forceTopKn), view.pxPerM),
    widthToPx: strokeWidthPx(Math.abs(stretch.forceFootKn), view.pxPerM),
    onTheWay: stub ? undefined : widthsOnTheWay(stretch, view.pxPerM),
  };
}

/** A solved upright takes up load on its way, not evenly from head to foot. */
export function widthsOnTheWay({ from, to, alongKn }: PathStroke["stretch"], pxPerM: number): PenRun["onTheWay"] {
  const heightMm = from.zMm - to.zMm;
  if (alongKn === undefined || heightMm <= 0) return undefined;
  return alongKn.slice(1, -1).map(({ zMm, forceKn }) => ({
    share: (from.zMm - zMm) / heightMm,
    widthPx: strokeWidthPx(Math.abs(forceKn), pxPerM),
  }));
}

/** The figure of a stroke: whole kN, tenths of a kip; what pulls upwards says so. */
export function forceFigure(forceKn: number, units: UnitSystem): string {
  const { force } = figuresIn(units);
  const figure = force(Math.abs(forceKn));
  return forceKn < 0 && figure !== force(0) ? `${figure} up` : figure;
}
