import type { PlanUnit } from "@cornerway/engine";
import { weight } from "../../look/ink.ts";
import { linePath, polylinePath } from "../px-path.ts";
import { toScreen, type ScreenPoint, type ViewTransform } from "../view-transform.ts";
import { outlineEdges } from "./plan-window.ts";

/** How far a break line runs past the unit on either side, and how large its zigzag is, px. */
const breakPx = { past: 4, reach: 4, half: 3 } as const;

type BrokenOutlineProps = {
  units: readonly PlanUnit[];
  view: ViewTransform;
  stroke: string;
  strokeWidth: number;
  strokeDasharray: string;
  /** The element it is of, by id. */
  of?: string;
};

/** Outlines of units overhead or below, dashed; where one is broken off, with the break line. */
export function BrokenOutline({ units, view, of, ...line }: BrokenOutlineProps) {
  if (units.length === 0) return null;
  const edges = units.flatMap(outlineEdges).map(({ from, to, broken }) => ({
    ...{ from: toScreen(view, from), to: toScreen(view, to), broken },
  }));
  const breaks = edges.filter(({ broken }) => broken);
  return (
    <g data-of={of} fill="none" pointerEvents="none">
      <path
        d={edges
          .filter(({ broken }) => !broken)
          .map(({ from, to }) => linePath(from.xPx, from.yPx, to.xPx, to.yPx))
          .join("")}
        {...line}
      />
      {breaks.length === 0 ? null : (
        <path
          d={breaks.map(({ from, to }) => breakLine(from, to)).join("")}
          stroke={line.stroke}
          strokeWidth={weight.fine}
        />
      )}
    </g>
  );
}

/** A thin line across, a zigzag in its middle. */
function breakLine(from: ScreenPoint, to: ScreenPoint): string {
  const length = Math.hypot(to.xPx - from.xPx, to.yPx - from.yPx) || 1;
  const [ux, uy] = [(to.xPx - from.xPx) / length, (to.yPx - from.yPx) / length];
  const at = (along: number, aside: number): ScreenPoint => ({
    xPx: from.xPx + ux * along - uy * aside,
    yPx: from.yPx + uy * along + ux * aside,
  });
  const middle = length / 2;
  const { past, reach, half } = breakPx;
  return polylinePath([
    ...[at(-past, 0), at(middle - half, 0), at(middle - half / 2, reach)],
    ...[at(middle + half / 2, -reach), at(middle + half, 0), at(length + past, 0)],
  ]);
}
