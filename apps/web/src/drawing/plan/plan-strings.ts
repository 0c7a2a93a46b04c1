import { planOpeningPlaces, type GridLine, type PlanModel } from "@cornerway/engine";
import type { UnitSystem } from "@cornerway/schema";
import { dimensionString, stacked, stringStepPx, together, type DimensionStrings } from "../dimension/strings.ts";
import type { BoxPx } from "../label/place-labels.ts";
import { xToPx, yToPx } from "../paper-to-px.ts";
import type { ViewTransform } from "../view-transform.ts";

/** Px from the outline of a plan to the nearest string on each side. */
export const planStringsPx = { top: 7, left: 8, foot: 17, right: 20 } as const;

/** The grid lines of a plan that run through what it shows. */
export type PlanGrid = { numbers: readonly GridLine[]; letters: readonly GridLine[] };

/**
 * Strings of a plan: bays between the circles of the grid, above and at the left; under it the openings of the wall there
 * from fitting to fitting, then the whole, as far as there is room down to `toPx`; the whole across at the right.
 */
export function planStrings(
  model: PlanModel,
  grid: PlanGrid,
  outline: BoxPx,
  view: ViewTransform,
  units: UnitSystem,
  toPx = Infinity,
): DimensionStrings {
  const acrossPx = (atMm: number) => xToPx(view, atMm);
  const upPx = (atMm: number) => yToPx(view, atMm);
  const numbers = grid.numbers.map(({ atMm }) => atMm);
  const letters = grid.letters.map(({ atMm }) => atMm);
  const level = (key: string, placesMm: readonly number[]) => (atPx: number) =>
    dimensionString(placesMm, { key, atPx, toPx: acrossPx, units });
  const upright = (key: string, placesMm: readonly number[]) => (atPx: number) =>
    dimensionString(placesMm, { key, upright: true, atPx, toPx: upPx, units });
  return together([
    stacked([level("bay", numbers)], outline.top - planStringsPx.top, 0),
    stacked([upright("row", letters.toReversed())], outline.left - planStringsPx.left, 0),
    stacked(
      [
        level("opening", hasOpeningString(view.pxPerM) ? planOpeningPlaces(model.units) : []),
        level("overall", ends(numbers)),
      ],
      outline.bottom + planStringsPx.foot,
      stringStepPx,
      toPx,
    ),
    stacked([upright("across", ends(letters.toReversed()))], outline.right + planStringsPx.right, 0),
  ]);
}

/** On a smaller plan the figures of openings would stand on each other, px a metre: 1:200. */
export const hasOpeningString = (pxPerM: number): boolean => pxPerM >= 25;

const ends = (places: readonly number[]): number[] => (places.length < 3 ? [] : [places[0] ?? 0, places.at(-1) ?? 0]);
