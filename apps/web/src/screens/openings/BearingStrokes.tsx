import type { ChartSide } from "@cornerway/engine";
import { Lettering } from "../../drawing/label/Lettering.tsx";
import { labelBox, type BoxPx, type Spot } from "../../drawing/label/place-labels.ts";
import { px } from "../../drawing/px-path.ts";
import { strokeWidthPx } from "../../drawing/stroke/stroke-width.ts";
import { ink } from "../../look/ink.ts";
import type { ChartScale } from "./chart-scale.ts";

type BearingStrokesProps = {
  readonly side: ChartSide;
  readonly scale: ChartScale;
  readonly tagOf: (id: string) => string;
};

type Bearing = ChartSide["bearings"][number];

/** Width of the stroke of a bearing, px: a measure of its force. */
export const bearingWidthPx = ({ forceN }: Bearing, scale: ChartScale): number =>
  strokeWidthPx(forceN / 1000, scale.pxPerMm * 1000);

/** The force of a bearing beside its stroke, towards the middle of the side. */
export function bearingFigure(
  bearing: Bearing,
  side: ChartSide,
  scale: ChartScale,
  tagOf: (id: string) => string,
): { readonly text: string; readonly spot: Spot; readonly sizePx: number } {
  const { at, uMm, elementId, forceN } = bearing;
  const towards = uMm < side.lengthMm / 2 ? 1 : -1;
  return {
    text: `${tagOf(elementId)} · ${Math.round(forceN / 1000)} kN`,
    spot: {
      xPx: scale.xPx(uMm) + towards * (bearingWidthPx(bearing, scale) / 2 + 6),
      yPx: at === "above" ? scale.topPx - 20 : scale.wallFootPx + 16,
      anchor: towards === 1 ? "start" : "end",
    },
    sizePx: 11,
  };
}

/** What comes down through the chart, with its figures, px: words keep off it. */
export const strokeBoxes = ({ side, scale, tagOf }: BearingStrokesProps): BoxPx[] =>
  side.bearings
    .filter((bearing) => bearing.at === "above")
    .flatMap((bearing): BoxPx[] => {
      const half = bearingWidthPx(bearing, scale) / 2;
      const x = scale.xPx(bearing.uMm);
      const { text, spot, sizePx } = bearingFigure(bearing, side, scale, tagOf);
      return [{ left: x - half, right: x + half, top: 0, bottom: scale.wallTopPx }, labelBox(text, sizePx, spot)];
    });

/** Half of a figure of the axis with a hair of air, px. */
const halfFigurePx = 9;

/** Where a figure of the axis stands: beside a stroke that would lie over it, towards the middle of the side. */
export function besideStrokes(xPx: number, side: ChartSide, scale: ChartScale): number {
  const over = side.bearings.find(
    (bearing) =>
      bearing.at === "above" &&
      Math.abs(scale.xPx(bearing.uMm) - xPx) < bearingWidthPx(bearing, scale) / 2 + halfFigurePx,
  );
  if (over === undefined) return xPx;
  const towards = over.uMm < side.lengthMm / 2 ? 1 : -1;
  return scale.xPx(over.uMm) + towards * (bearingWidthPx(over, scale) / 2 + halfFigurePx);
}

/** What comes down on the side, through the chart to its place on the wall, and what stands below; widths by the scale of strokes. */
export function BearingStrokes({ side, scale, tagOf }: BearingStrokesProps) {
  return (
    <g aria-hidden="true">
      {side.bearings.map((bearing) => {
        const { at, uMm, elementId } = bearing;
        const widthPx = bearingWidthPx(bearing, scale);
        const x = scale.xPx(uMm);
        const [from, to] =
          at === "above" ? [scale.topPx - 26, scale.wallTopPx] : [scale.wallFootPx, scale.wallFootPx + 22];
        return (
          <g key={`${at} ${elementId} ${uMm}`}>
            <rect
              x={px(x - widthPx / 2)}
              y={px(from)}
              width={px(widthPx)}
              height={px(to - from)}
              fill={ink.ink}
              fillOpacity={0.94}
            />
            <Lettering {...bearingFigure(bearing, side, scale, tagOf)} fontWeight={600} />
          </g>
        );
      })}
    </g>
  );
}
