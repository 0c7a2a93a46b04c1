import type { ElevationModel } from "@cornerway/engine";
import { dash, ink } from "../../look/ink.ts";
import { DimensionLines } from "../dimension/DimensionLines.tsx";
import type { DimensionLine } from "../dimension/strings.ts";
import { GridLines } from "../grid/GridLines.tsx";
import { xToPx, yToPx } from "../paper-to-px.ts";
import { px } from "../px-path.ts";
import type { ViewTransform } from "../view-transform.ts";

type ElevationFrameProps = {
  model: ElevationModel;
  view: ViewTransform;
  dimensions: readonly DimensionLine[];
  fromPx: number | undefined;
  toPx: number | undefined;
  /** The top of what is seen, px; the grid's circles never leave it. */
  seenFromPx: number | undefined;
};

/** Px above the roof at which the grid bubbles stand. */
const bubbleRisePx = 30;
/** Px from the edge of what is seen to the middle of a circle kept there. */
const keptInPx = 15;

/** What frames an elevation: level lines, grid with its bubbles, dimension strings. */
export function ElevationFrame({ model, view, dimensions, fromPx, toPx, seenFromPx = -Infinity }: ElevationFrameProps) {
  const { extent, grid, levels } = model;
  if (extent === null) return null;
  const ground = yToPx(view, model.groundMm);
  const right = xToPx(view, extent.u1Mm);
  const lines = grid.map(({ label, atMm }) => ({ label, atPx: xToPx(view, atMm) }));
  const footPx = Math.max(ground, ...dimensions.filter(({ upright }) => !upright).map(({ atPx }) => atPx));
  return (
    <g aria-hidden="true">
      <path
        d={levels
          .map(
            ({ zMm }) =>
              `M${px(fromPx ?? xToPx(view, extent.u0Mm) - 60)} ${px(yToPx(view, zMm))}H${px(toPx ?? right + 32)}`,
          )
          .join("")}
        stroke={ink.pencil}
        strokeWidth={0.6}
        strokeDasharray={dash.centre}
      />
      <GridLines
        lines={lines}
        upright
        bubblePx={Math.max(yToPx(view, extent.z1Mm) - bubbleRisePx, seenFromPx + keptInPx)}
        toPx={footPx + 6}
      />
      <DimensionLines lines={dimensions} />
    </g>
  );
}
