import { spreadApart } from "../grid/spread-apart.ts";
import { boxAround, type BoxPx } from "../label/place-labels.ts";
import { yToPx } from "../paper-to-px.ts";
import type { ViewTransform } from "../view-transform.ts";
import type { PlanGrid } from "./plan-strings.ts";

export const planCircleRadiusPx = 8.5;
/** Px the grid runs past the building, and from there to its circles. */
export const pastPlanPx = 20;

/** Px more that the circles at the top keep off the figures of the string under them. */
const offFiguresPx = 4;

/** Where the circles of a plan's grid stand, px: the middles of those at the top across, of those at the left down. */
export const planCirclePlaces = ({ left, top }: BoxPx) => ({
  topPx: top - pastPlanPx - offFiguresPx - planCircleRadiusPx,
  leftPx: left - 22 - planCircleRadiusPx,
});

/** Circles of close lines step aside from each other. */
export const circlesApart = (atPx: readonly number[]): number[] => spreadApart(atPx, planCircleRadiusPx * 2 + 4);

/** The room the circles at the left take: what is lettered beside a wall keeps off. Those at the top stand over the strings. */
export function planCircles({ letters }: PlanGrid, outline: BoxPx, view: ViewTransform): BoxPx[] {
  const { leftPx } = planCirclePlaces(outline);
  return circlesApart(letters.map(({ atMm }) => yToPx(view, atMm))).map((yPx) =>
    boxAround(leftPx, yPx, planCircleRadiusPx, planCircleRadiusPx),
  );
}
