import type { ElevationModel } from "@cornerway/engine";
import { dash, ink } from "../../look/ink.ts";
import { DimensionString } from "../dimension/DimensionString.tsx";
import { GridLines } from "../grid/GridLines.tsx";
import { xToPx, yToPx } from "../paper-to-px.ts";
import { px } from "../px-path.ts";
import type { ViewTransform } from "../view-transform.ts";
import { dimensionRowsPx } from "./elevation-labels.ts";

type ElevationFrameProps = {
  model: ElevationModel;
  view: ViewTransform;
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
export function ElevationFrame({ model, view, fromPx, toPx, seenFromPx = -Infinity }: ElevationFrameProps) {
  const { extent, grid, levels } = model;
  if (extent === null) return null;
  const ground = yToPx(view, model.groundMm);
  const right = xToPx(view, extent.u1Mm);
  const lines = grid.map(({ label, atMm }) => ({ label, atPx: xToPx(view, atMm) }));
  const places = lines.map(({ atPx }) => atPx);
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
        toPx={ground + dimensionRowsPx.overall + 6}
      />
      <DimensionString placesPx={places} atPx={ground + dimensionRowsPx.bays} />
      {places.length > 2 && (
        <DimensionString
          placesPx={[Math.min(...places), Math.max(...places)]}
          atPx={ground + dimensionRowsPx.overall}
        />
      )}
      <DimensionString
        upright
        placesPx={levels.map(({ zMm }) => yToPx(view, zMm))}
        atPx={right + dimensionRowsPx.heights}
      />
    </g>
  );
}
