import { containerDimensions } from "@cornerway/engine";
import { dash, ink } from "../../look/ink.ts";
import { DimensionString } from "../dimension/DimensionString.tsx";
import { PencilTree, ScaleFigure } from "../figures/ScaleFigures.tsx";
import { GridLines } from "../grid/GridLines.tsx";
import { GroundLine } from "../ground/GroundLine.tsx";
import { Lettering } from "../label/Lettering.tsx";
import { rectToPx, xToPx, yToPx } from "../paper-to-px.ts";
import { drawnLength } from "../../units/drawn-length.ts";
import { useUnits } from "../../units/use-units.ts";
import { linePath, rectPath, type RectPx } from "../px-path.ts";
import type { ViewTransform } from "../view-transform.ts";

const first = containerDimensions("1AAA");

/** The sheet before anything stands on it: ground, two grid lines, and the place of the first container, dashed. */
export function EmptyElevation({ view, groundMm }: { view: ViewTransform; groundMm: number }) {
  const units = useUnits();
  const half = first.lengthMm / 2;
  const rect = rectToPx(view, { u0Mm: -half, u1Mm: half, z0Mm: groundMm, z1Mm: groundMm + first.heightMm });
  const ground = yToPx(view, groundMm);
  const [left, right] = [rect.xPx, rect.xPx + rect.widthPx];
  const { pxPerM } = view;
  return (
    <g aria-hidden="true">
      <GridLines
        upright
        lines={[
          { label: "1", atPx: left },
          { label: "2", atPx: right },
        ]}
        bubblePx={rect.yPx - 44}
        toPx={ground + 50}
      />
      <ScaleFigure xPx={left - 0.6 * pxPerM} groundPx={ground} pxPerM={pxPerM} />
      <PencilTree xPx={xToPx(view, -half - 1500)} groundPx={ground} pxPerM={pxPerM} tallM={2.6} />
      <PencilTree xPx={xToPx(view, half + 1300)} groundPx={ground} pxPerM={pxPerM} tallM={3.2} />
      <GroundLine fromPx={left - 2.1 * pxPerM} toPx={right + 2.1 * pxPerM} groundPx={ground} />
      <path d={rectPath(rect)} fill="none" stroke={ink.graphite} strokeWidth={1.3} strokeDasharray={dash.proposed} />
      <path d={fittingOutlines(rect, pxPerM)} fill={ink.paper} stroke={ink.graphite} strokeWidth={0.75} />
      <path d={diagonals(rect)} stroke={ink.pencil} strokeWidth={0.6} />
      <DimensionString placesPx={[left, right]} atPx={ground + 42} />
      <Lettering
        text={drawnLength(first.lengthMm, units)}
        spot={{ xPx: (left + right) / 2, yPx: ground + 37, anchor: "middle" }}
        sizePx={11}
        colour={ink.graphite}
        fontWeight={400}
      />
      <DimensionString upright placesPx={[rect.yPx, ground]} atPx={right + 36} />
      <Lettering
        text={drawnLength(first.heightMm, units)}
        spot={{ xPx: right + 31, yPx: (rect.yPx + ground) / 2, anchor: "middle", turned: true }}
        sizePx={11}
        colour={ink.graphite}
        fontWeight={400}
      />
    </g>
  );
}

function fittingOutlines({ xPx, yPx, widthPx, heightPx }: RectPx, pxPerM: number): string {
  const size = {
    widthPx: (first.fitting.lengthMm * pxPerM) / 1000,
    heightPx: (first.fitting.heightMm * pxPerM) / 1000,
  };
  return [xPx, xPx + widthPx - size.widthPx]
    .flatMap((x) => [yPx, yPx + heightPx - size.heightPx].map((y) => rectPath({ ...size, xPx: x, yPx: y })))
    .join("");
}

/** From each corner a third of the way in, leaving the middle free for the words. */
function diagonals({ xPx, yPx, widthPx, heightPx }: RectPx): string {
  const corner = (fromX: number, fromY: number) => {
    const dx = xPx + widthPx / 2 - fromX;
    const dy = yPx + heightPx / 2 - fromY;
    return linePath(fromX + dx * 0.05, fromY + dy * 0.16, fromX + dx * 0.5, fromY + dy * 0.64);
  };
  return [xPx, xPx + widthPx].flatMap((x) => [yPx, yPx + heightPx].map((y) => corner(x, y))).join("");
}
