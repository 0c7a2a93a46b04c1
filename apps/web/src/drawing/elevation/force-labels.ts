import type { PathStroke } from "@cornerway/engine";
import type { UnitSystem } from "@cornerway/schema";
import { ink } from "../../look/ink.ts";
import { labelBox, type BoxPx, type Label, type Spot } from "../label/place-labels.ts";
import { forceFigure, strokeRun } from "../stroke/stroke-run.ts";
import { toScreen, type ScreenPoint, type ViewTransform } from "../view-transform.ts";

export type ForceLabel = Label & { colour: string; fontWeight: number };

/** Rises over a foot that a figure may take, the first of them always, px; a seat's on a post fall under its head. */
const risesPx = [15, 31, 47, 63, 79, 95] as const;
const fallsPx = [16, 32, 48] as const;
const besideStubPx = [0, -14, 26, 40, -28] as const;
/** How far aside a figure may stand with a leader, px. */
const ledPx = [14, 24, 36, 50, 66, 84] as const;
/** Beside its own stroke a figure is read as of no other only if it is nearer to it by this much, px. */
const nearerPx = 3;
/** Led from afar it keeps this far from what another figure is of, px. */
const offOthersPx = 12;

/**
 * Figures of strokes: each beside its foot, a seat's on a post beside its head, where it is nearer to its own than to what
 * any other is of; else farther aside, with a leader.
 */
export function forceLabels(
  strokes: readonly PathStroke[],
  view: ViewTransform,
  units: UnitSystem,
  sizePx: number,
): ForceLabel[] {
  const lettered = strokes.filter(({ figureAt }) => figureAt !== null);
  const owns = lettered.map((stroke) => figureOf(stroke, view));
  return lettered.flatMap((stroke, at): ForceLabel[] => {
    const text = forceFigure(stroke.stretch.forceFootKn, units);
    const own = owns[at];
    if (own === undefined) return [];
    const others = owns.filter((_, n) => n !== at);
    const box = (spot: Spot) => labelBox(text, sizePx, spot);
    const beside = besideSpots(stroke, view).filter((spot) => {
      const ownPx = fromBoxPx(box(spot), own);
      return others.every((other) => ownPx + nearerPx <= fromBoxPx(box(spot), other));
    });
    const led = ledSpots(stroke, view, own).filter((spot) =>
      others.every((other) => fromBoxPx(box(spot), other) >= offOthersPx),
    );
    const spots = [...beside, ...led];
    if (spots.length === 0) return [];
    return [
      {
        ...{ key: `force-${stroke.stretch.id}`, text, spots, sizePx },
        ...{ colour: stroke.added ? ink.prussian : ink.ink, fontWeight: 600 },
      },
    ];
  });
}

/** The place on a stroke its figure is of: a little over its foot, under its head where it stands on a post, within a stub. */
function figureOf({ to, figureAt, stub }: PathStroke, view: ViewTransform): ScreenPoint {
  const { xPx, yPx } = toScreen(view, to);
  return { xPx, yPx: yPx + (figureAt === "head" || stub ? withinPx : -withinPx) };
}

const withinPx = 8;

function besideSpots(stroke: PathStroke, view: ViewTransform): Spot[] {
  const { from, to, widthToPx } = strokeRun(stroke, view);
  const aside = widthToPx / 2 + 5;
  return risesOf(stroke, to.yPx - from.yPx).flatMap((rise): Spot[] => [
    { xPx: to.xPx + aside, yPx: to.yPx - rise, anchor: "start" },
    { xPx: to.xPx - aside, yPx: to.yPx - rise, anchor: "end" },
  ]);
}

function risesOf({ figureAt, stub }: PathStroke, tallPx: number): readonly number[] {
  if (figureAt === "head") return fallsPx.map((fall) => -fall);
  if (stub) return besideStubPx;
  return risesPx.filter((rise, at) => at === 0 || rise < tallPx);
}

/** Level with its place and with rows a little over and under it, farther and farther aside. */
function ledSpots(stroke: PathStroke, view: ViewTransform, own: ScreenPoint): Spot[] {
  const half = strokeRun(stroke, view).widthToPx / 2;
  return ledPx.flatMap((off) =>
    [0, -11, 11].flatMap((fall) =>
      ([1, -1] as const).map((side): Spot => {
        const yPx = own.yPx + fall;
        const lead = { xPx: own.xPx + side * Math.max(half - 1, 0), yPx };
        return { xPx: own.xPx + side * (half + off), yPx: yPx + 4, anchor: side === 1 ? "start" : "end", lead };
      }),
    ),
  );
}

/** From a place to the nearest of a box, px. */
function fromBoxPx({ left, right, top, bottom }: BoxPx, { xPx, yPx }: ScreenPoint): number {
  return Math.hypot(Math.max(left - xPx, 0, xPx - right), Math.max(top - yPx, 0, yPx - bottom));
}
