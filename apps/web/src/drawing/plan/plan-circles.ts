import { spreadApart } from "../grid/spread-apart.ts";
import type { DimensionStrings } from "../dimension/strings.ts";
import { boxAround, placeLabels, type BoxPx, type Spot } from "../label/place-labels.ts";
import { yToPx } from "../paper-to-px.ts";
import type { ViewTransform } from "../view-transform.ts";
import type { PlanGrid } from "./plan-strings.ts";

export const planCircleRadiusPx = 8.5;
/** Px the grid runs past the building, and from there to its circles. */
export const pastPlanPx = 20;

/** Px that circles without a string under them keep off the building. */
const offWallPx = 8;
/** Px more that the circles at the top keep off the figures of the string under them. */
const offFiguresPx = 1;

/** Px that a second row of figures takes. */
const rowPx = 12;

/** The middles of the circles of a plan's grid, px: of those at the top across, of those at the left down. */
export type CirclePlaces = { topPx: number; leftPx: number };

/** Beyond the figures of the strings between them. */
export const planCirclePlaces = ({ left, top }: BoxPx, { lines, labels }: DimensionStrings): CirclePlaces => {
  const isDrawn = (key: string) => lines.some((each) => each.key === key);
  const placed = placeLabels(labels, []);
  const row = (key: string, off: (spot: Spot) => number) => {
    const line = lines.find((each) => each.key === key);
    const figures = placed.filter((label) => label.key.startsWith(`${key}-`));
    return line !== undefined && figures.some(({ spot }) => off(spot) < line.atPx - rowPx) ? rowPx : 0;
  };
  return {
    topPx: isDrawn("bay")
      ? top - pastPlanPx - offFiguresPx - planCircleRadiusPx - row("bay", ({ yPx }) => yPx)
      : top - offWallPx - planCircleRadiusPx,
    leftPx: left - 22 - planCircleRadiusPx - row("row", ({ xPx }) => xPx),
  };
};

/** Circles of close lines step aside from each other. */
export const circlesApart = (atPx: readonly number[]): number[] => spreadApart(atPx, planCircleRadiusPx * 2 + 4);

/** The room the circles at the left take: what is lettered beside a wall keeps off. Those at the top stand over the strings. */
export function planCircles({ letters }: PlanGrid, { leftPx }: CirclePlaces, view: ViewTransform): BoxPx[] {
  return circlesApart(letters.map(({ atMm }) => yToPx(view, atMm))).map((yPx) =>
    boxAround(leftPx, yPx, planCircleRadiusPx, planCircleRadiusPx),
  );
}
