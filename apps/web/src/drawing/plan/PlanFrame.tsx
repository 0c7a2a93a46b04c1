import type { Scheme } from "@cornerway/schema";
import { ink } from "../../look/ink.ts";
import { DimensionLines } from "../dimension/DimensionLines.tsx";
import type { DimensionStrings } from "../dimension/strings.ts";
import { GridLines } from "../grid/GridLines.tsx";
import { xToPx, yToPx } from "../paper-to-px.ts";
import { px } from "../px-path.ts";
import type { PlanViewProps } from "../contract.ts";
import type { ViewTransform } from "../view-transform.ts";
import type { BoxPx } from "../label/place-labels.ts";
import { northPlace } from "./north-place.ts";
import { pastPlanPx as pastPx, planCircleRadiusPx as radiusPx, type CirclePlaces } from "./plan-circles.ts";
import type { PlanGrid } from "./plan-strings.ts";

/** Px from the edge of what is seen to the middle of a circle kept there. */
const keptInPx = 12;

/** Grid lines of what a storey shows, with their circles at the top and at the left, and north. */
export function PlanFrame({
  scheme,
  view,
  grid,
  outline,
  strings,
  circlePlaces: circles,
  seenFrom = { leftPx: -Infinity, topPx: -Infinity },
}: {
  scheme: Scheme;
  view: ViewTransform;
  grid: PlanGrid;
  outline: BoxPx;
  strings: DimensionStrings;
  circlePlaces: CirclePlaces;
  seenFrom?: PlanViewProps["seenFrom"];
}) {
  const { right, bottom: foot } = outline;
  const north = northPlace(outline);
  const levels = strings.lines.filter(({ upright }) => !upright);
  return (
    <g aria-hidden="true">
      <GridLines
        upright
        radiusPx={radiusPx}
        lines={grid.numbers.map(({ label, atMm }) => ({ label, atPx: xToPx(view, atMm) }))}
        bubblePx={Math.max(circles.topPx, seenFrom.topPx + keptInPx)}
        toPx={Math.max(foot + pastPx, ...levels.map(({ atPx }) => atPx)) + 4}
      />
      <GridLines
        upright={false}
        radiusPx={radiusPx}
        lines={grid.letters.map(({ label, atMm }) => ({ label, atPx: yToPx(view, atMm) }))}
        bubblePx={Math.max(circles.leftPx, seenFrom.leftPx + keptInPx)}
        toPx={right + pastPx + 4}
      />
      <DimensionLines lines={strings.lines} />
      <NorthArrow {...north} turnDeg={-scheme.site.northMdeg / 1000} />
    </g>
  );
}

function NorthArrow({ xPx, yPx, turnDeg }: { xPx: number; yPx: number; turnDeg: number }) {
  return (
    <g transform={`translate(${px(xPx)} ${px(yPx)}) rotate(${turnDeg})`}>
      <circle r={11} fill="none" stroke={ink.ink} strokeWidth={1.1} />
      <path d="M0 -17L5.4 8L0 4.6L-5.4 8Z" fill={ink.ink} />
      <text y={-20} textAnchor="middle" fontSize={11} fontWeight={600} fill={ink.ink}>
        N
      </text>
    </g>
  );
}
