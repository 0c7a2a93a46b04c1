import { useMemo } from "react";
import type { Scheme } from "@cornerway/schema";
import { gridOf, type GridLine } from "@cornerway/engine";
import { ink } from "../../look/ink.ts";
import { GridLines } from "../grid/GridLines.tsx";
import { xToPx, yToPx } from "../paper-to-px.ts";
import { px } from "../px-path.ts";
import type { PlanViewProps } from "../contract.ts";
import type { ViewTransform } from "../view-transform.ts";
import { northPlace, planOutline } from "./north-place.ts";

/** Px the grid runs past the building, and from there to its circles. */
const pastPx = 12;
const radiusPx = 8.5;
/** Px from the edge of what is seen to the middle of a circle kept there. */
const keptInPx = 12;

/** Grid lines of what a storey shows, with their circles at the top and at the left, and north. */
export function PlanFrame({
  scheme,
  storey,
  view,
  revisionLetters,
  seenFrom = { leftPx: -Infinity, topPx: -Infinity },
}: {
  scheme: Scheme;
  storey: number;
  view: ViewTransform;
  revisionLetters: readonly string[];
  seenFrom?: PlanViewProps["seenFrom"];
}) {
  const grid = useMemo(() => gridOf(scheme, revisionLetters), [scheme, revisionLetters]);
  const outline = planOutline(scheme, storey, view);
  if (outline === null) return null;
  const { left, right, top, bottom: foot } = outline;
  const north = northPlace(outline);
  return (
    <g aria-hidden="true">
      <GridLines
        upright
        radiusPx={radiusPx}
        lines={linesWithin(grid.numbers, (atMm) => xToPx(view, atMm), left, right)}
        bubblePx={Math.max(top - pastPx - radiusPx, seenFrom.topPx + keptInPx)}
        toPx={foot + pastPx}
      />
      <GridLines
        upright={false}
        radiusPx={radiusPx}
        lines={linesWithin(grid.letters, (atMm) => yToPx(view, atMm), top, foot)}
        bubblePx={Math.max(left - pastPx - radiusPx - 10, seenFrom.leftPx + keptInPx)}
        toPx={right + pastPx}
      />
      <NorthArrow {...north} turnDeg={-scheme.site.northMdeg / 1000} />
    </g>
  );
}

/** The lines of the grid that run through what this plan shows; the others belong to other storeys. */
const linesWithin = (lines: readonly GridLine[], toPx: (atMm: number) => number, fromPx: number, endPx: number) =>
  lines
    .map(({ label, atMm }) => ({ label, atPx: toPx(atMm) }))
    .filter(({ atPx }) => atPx >= fromPx - 1 && atPx <= endPx + 1);

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
