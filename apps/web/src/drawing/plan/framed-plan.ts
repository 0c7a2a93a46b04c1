import { gridOf, type Grid, type PlanModel } from "@cornerway/engine";
import type { Scheme, UnitSystem } from "@cornerway/schema";
import type { DimensionStrings } from "../dimension/strings.ts";
import type { BoxPx } from "../label/place-labels.ts";
import { xToPx, yToPx } from "../paper-to-px.ts";
import type { ViewTransform } from "../view-transform.ts";
import { planOutline } from "./north-place.ts";
import { planCirclePlaces, planCircles, type CirclePlaces } from "./plan-circles.ts";
import { planStrings, type PlanGrid, type Within } from "./plan-strings.ts";

/** What stands round a plan: its outline, null where nothing is drawn, the grid through it, its strings. */
export interface FramedPlan {
  outline: BoxPx | null;
  grid: PlanGrid;
  strings: DimensionStrings;
  /** The middles of the circles at the top across, of those at the left down, px. */
  circlePlaces: CirclePlaces;
  /** The room its circles take, and its title under it, px. */
  circles: readonly BoxPx[];
}

interface Framing {
  scheme: Scheme;
  view: ViewTransform;
  revisionLetters: readonly string[];
  units: UnitSystem;
  /** Between which heights strings and figures may stand: under it its title begins. */
  stringsWithin?: Within | undefined;
}

/** The grid of what a plan shows, and what is dimensioned beside it. */
export function framedPlan(
  model: PlanModel,
  { scheme, view, revisionLetters, units, stringsWithin }: Framing,
): FramedPlan {
  const outline = planOutline(scheme, model.storey, view);
  if (outline === null)
    return { outline, grid: { numbers: [], letters: [] }, strings: noStrings, circlePlaces: nowhere, circles: [] };
  const grid = gridWithin(gridOf(scheme, revisionLetters), outline, view);
  const strings = planStrings(model, grid, outline, view, units, stringsWithin);
  const circlePlaces = planCirclePlaces(outline, strings);
  return {
    ...{ outline, grid, strings, circlePlaces },
    circles: [...planCircles(grid, circlePlaces, view), ...titleBox(stringsWithin?.footPx)],
  };
}

const noStrings: DimensionStrings = { lines: [], labels: [] };
const nowhere: CirclePlaces = { topPx: 0, leftPx: 0 };

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
