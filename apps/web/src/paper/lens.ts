import type { ScreenPoint } from "../drawing/view-transform.ts";
import type { LaidView, LaidViews, RectPx } from "./lay-views.ts";

/** The views one can look into more closely. */
export type ViewName = "elevation" | "plan" | "isometric";

/** How a view is looked at: magnified so many times about the middle of its place, then moved by so many px. */
export interface Lens {
  times: number;
  shiftXPx: number;
  shiftYPx: number;
}

export type Lenses = Readonly<Record<ViewName, Lens>>;

export const plainLens: Lens = { times: 1, shiftXPx: 0, shiftYPx: 0 };
export const plainLenses: Lenses = { elevation: plainLens, plan: plainLens, isometric: plainLens };

/** Denominators of the scales a drawing is stepped through (ISO 5455, recommended scales; from memory). */
const denominators = [5, 10, 20, 50, 100, 200, 500, 1000, 2000];
/** 50 px a metre is 1:100: on paper one px of the sheet is printed 0.2 mm long. */
const pxPerMAtFullSize = 5000;

export const denominatorOf = (pxPerM: number): number => pxPerMAtFullSize / pxPerM;
export const statedScale = (pxPerM: number): string => `1:${Math.round(denominatorOf(pxPerM))}`;

/** Views magnified as their lenses say; what lies outside a view's own place is cut off by whoever draws it. */
export const throughLenses = (views: LaidViews, lenses: Lenses): LaidViews =>
  isPlain(lenses.elevation) && isPlain(lenses.plan) && isPlain(lenses.isometric)
    ? views
    : {
        ...views,
        elevation: through(views.elevation, lenses.elevation),
        plan: through(views.plan, lenses.plan),
        isometric: through(views.isometric, lenses.isometric),
      };

function through({ rect, transform }: LaidView, { times, shiftXPx, shiftYPx }: Lens): LaidView {
  const middle = middleOf(rect);
  return {
    rect,
    transform: {
      originXPx: middle.xPx + (transform.originXPx - middle.xPx) * times + shiftXPx,
      originYPx: middle.yPx + (transform.originYPx - middle.yPx) * times + shiftYPx,
      pxPerM: transform.pxPerM * times,
    },
  };
}

const middleOf = ({ leftPx, topPx, widthPx, heightPx }: RectPx): ScreenPoint => ({
  xPx: leftPx + widthPx / 2,
  yPx: topPx + heightPx / 2,
});

/** Magnified further so that `at` stays where it is; within 1:5 and a half of the size the sheet gave the view. */
export function magnified(lens: Lens, { rect, transform }: LaidView, at: ScreenPoint, by: number): Lens {
  const most = Math.max(1, pxPerMAtFullSize / 5 / transform.pxPerM);
  const times = Math.min(most, Math.max(0.5, lens.times * by));
  const kept = times / lens.times;
  const middle = middleOf(rect);
  return {
    times,
    shiftXPx: (at.xPx - middle.xPx) * (1 - kept) + lens.shiftXPx * kept,
    shiftYPx: (at.yPx - middle.yPx) * (1 - kept) + lens.shiftYPx * kept,
  };
}

export const moved = (lens: Lens, byXPx: number, byYPx: number): Lens => ({
  ...lens,
  shiftXPx: lens.shiftXPx + byXPx,
  shiftYPx: lens.shiftYPx + byYPx,
});

/** To the next scale of the list: larger (1) or smaller (−1), about the middle of the view's place. */
export function stepped(lens: Lens, laid: LaidView, by: 1 | -1): Lens {
  const now = denominatorOf(laid.transform.pxPerM * lens.times);
  const next =
    by === 1
      ? denominators.findLast((each) => each < now * (1 - sameScale))
      : denominators.find((each) => each > now * (1 + sameScale));
  return next === undefined ? lens : magnified(lens, laid, middleOf(laid.rect), now / next);
}

/** Scales that differ by less are the same one. */
const sameScale = 0.001;

/** Moved so that a place of the view, px as now drawn, stands in its middle; left alone where it can be seen already. */
export function broughtIntoView(lens: Lens, { rect }: LaidView, at: ScreenPoint): Lens {
  if (isWithin(drawnRect(rect), at)) return lens;
  const middle = middleOf(rect);
  return moved(lens, middle.xPx - at.xPx, middle.yPx - at.yPx);
}

/** Px under a view that belong to its title. */
const titleFootPx = 42;

/** The part of a view's place its drawing is cut off at: what is over its title. */
export const drawnRect = (rect: RectPx): RectPx => ({ ...rect, heightPx: Math.max(0, rect.heightPx - titleFootPx) });

export const isWithin = ({ leftPx, topPx, widthPx, heightPx }: RectPx, { xPx, yPx }: ScreenPoint): boolean =>
  xPx >= leftPx && xPx <= leftPx + widthPx && yPx >= topPx && yPx <= topPx + heightPx;

export const isPlain = ({ times, shiftXPx, shiftYPx }: Lens): boolean =>
  times === 1 && shiftXPx === 0 && shiftYPx === 0;
