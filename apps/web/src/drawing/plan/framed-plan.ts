import { gridOf, type Grid, type PlanModel } from "@cornerway/engine";
import type { Scheme, UnitSystem } from "@cornerway/schema";
import type { DimensionStrings } from "../dimension/strings.ts";
import type { BoxPx } from "../label/place-labels.ts";
import { xToPx, yToPx } from "../paper-to-px.ts";
import type { ViewTransform } from "../view-transform.ts";
import { planOutline } from "./north-place.ts";
import { planCircles } from "./plan-circles.ts";
import { planStrings, type PlanGrid } from "./plan-strings.ts";

/** What stands round a plan: its outline, null where nothing is drawn, the grid through it, its strings. */
export interface FramedPlan {
  outline: BoxPx | null;
  grid: PlanGrid;
  strings: DimensionStrings;
  /** The room its circles take, and its title under it, px. */
  circles: readonly BoxPx[];
}

interface Framing {
  scheme: Scheme;
  view: ViewTransform;
  revisionLetters: readonly string[];
  units: UnitSystem;
  /** Px down to which strings and figures may stand under it: there its title begins. */
  stringsToPx?: number | undefined;
}

/** The grid of what a plan shows, and what is dimensioned beside it. */
export function framedPlan(
  model: PlanModel,
  { scheme, view, revisionLetters, units, stringsToPx }: Framing,
): FramedPlan {
  const outline = planOutline(scheme, model.storey, view);
  if (outline === null)
    return { outline, grid: { numbers: [], letters: [] }, strings: { lines: [], labels: [] }, circles: [] };
  const grid = gridWithin(gridOf(scheme, revisionLetters), outline, view);
  return {
    ...{ outline, grid, strings: planStrings(model, grid, outline, view, units, stringsToPx) },
    circles: [...planCircles(grid, outline, view), ...titleBox(stringsToPx)],
  };
}

const titleBox = (topPx: number | undefined): BoxPx[] =>
  topPx === undefined ? [] : [{ left: -Infinity, right: Infinity, top: topPx, bottom: Infinity }];

/** The other lines of the grid belong to other storeys. */
const gridWithin = (
  { numbers, letters }: Grid,
  { left, right, top, bottom }: BoxPx,
  view: ViewTransform,
): PlanGrid => ({
  numbers: numbers.filter(({ atMm }) => isWithin(xToPx(view, atMm), left, right)),
  letters: letters.filter(({ atMm }) => isWithin(yToPx(view, atMm), top, bottom)),
});

const isWithin = (atPx: number, from: number, to: number): boolean => atPx >= from - 1 && atPx <= to + 1;
