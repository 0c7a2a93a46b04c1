import { planOpeningPlaces, type GridLine, type PlanModel } from "@cornerway/engine";
import type { UnitSystem } from "@cornerway/schema";
import {
  dimensionString,
  figureRowsPx,
  stacked,
  stringStepPx,
  together,
  type DimensionStrings,
} from "../dimension/strings.ts";
import type { BoxPx } from "../label/place-labels.ts";
import { xToPx, yToPx } from "../paper-to-px.ts";
import type { ViewTransform } from "../view-transform.ts";

/** Px from the outline of a plan to the nearest string on each side. */
export const planStringsPx = { top: 7, left: 8, foot: 16, right: 22 } as const;

/** What the string of the bays takes over a plan with the circles beyond it, px. */
export const planTopPx = 38;

/** Heights that strings and circles keep to, px. */
export type Within = { topPx: number; footPx: number };
const everywhere: Within = { topPx: -Infinity, footPx: Infinity };

/** The grid lines of a plan that run through what it shows. */
export type PlanGrid = { numbers: readonly GridLine[]; letters: readonly GridLine[] };

/**
 * Strings of a plan: bays between the circles of the grid, above and at the left; under it the openings of the wall there
 * from fitting to fitting, then the whole, as far as there is room; the whole across at the right.
 */
export function planStrings(
  model: PlanModel,
  grid: PlanGrid,
  outline: BoxPx,
  view: ViewTransform,
  units: UnitSystem,
  within: Within = everywhere,
): DimensionStrings {
  const acrossPx = (atMm: number) => xToPx(view, atMm);
  const upPx = (atMm: number) => yToPx(view, atMm);
  const numbers = grid.numbers.map(({ atMm }) => atMm);
  const letters = grid.letters.map(({ atMm }) => atMm);
  const level = (key: string, placesMm: readonly number[], rows?: readonly number[]) => (atPx: number) =>
    dimensionString(placesMm, { key, atPx, toPx: acrossPx, units, ...(rows && { rows }) });
  const upright = (key: string, placesMm: readonly number[], rows?: readonly number[]) => (atPx: number) =>
    dimensionString(placesMm, { key, upright: true, atPx, toPx: upPx, units, ...(rows && { rows }) });
  const footPx = outline.bottom + planStringsPx.foot;
  // Where there is room for one string alone, it is that of the whole.
  const opened = hasOpeningString(view.pxPerM) && footPx + stringStepPx <= within.footPx;
  return together([
    outline.top - planTopPx < within.topPx - 1
      ? { lines: [], labels: [] }
      : stacked([level("bay", numbers, figureRowsPx.outwards)], outline.top - planStringsPx.top, 0),
    stacked([upright("row", letters.toReversed(), figureRowsPx.outwards)], outline.left - planStringsPx.left, 0),
    stacked(
      [level("opening", opened ? planOpeningPlaces(model.units) : []), level("overall", ends(numbers))],
      footPx,
      stringStepPx,
      within.footPx,
    ),
    stacked([upright("across", ends(letters.toReversed()))], outline.right + planStringsPx.right, 0),
  ]);
}

/** On a smaller plan the figures of openings would stand on each other, px a metre: 1:200. */
export const hasOpeningString = (pxPerM: number): boolean => pxPerM >= 25;

const ends = (places: readonly number[]): number[] => (places.length < 3 ? [] : [places[0] ?? 0, places.at(-1) ?? 0]);
