import type { ChartSide } from "@cornerway/engine";
import { Lettering } from "../../drawing/label/Lettering.tsx";
import { px } from "../../drawing/px-path.ts";
import { strokeWidthPx } from "../../drawing/stroke/stroke-width.ts";
import { ink } from "../../look/ink.ts";
import type { ChartScale } from "./chart-scale.ts";

type BearingStrokesProps = {
  readonly side: ChartSide;
  readonly scale: ChartScale;
  readonly tagOf: (id: string) => string;
};

/** Width of the stroke of a bearing, px: a measure of its force. */
export const bearingWidthPx = ({ forceN }: ChartSide["bearings"][number], scale: ChartScale): number =>
  strokeWidthPx(forceN / 1000, scale.pxPerMm * 1000);

/** What comes down on the side, through the chart to its place on the wall, and what stands below; widths by the scale of strokes. */
export function BearingStrokes({ side, scale, tagOf }: BearingStrokesProps) {
  const middle = side.lengthMm / 2;
  return (
    <g aria-hidden="true">
      {side.bearings.map((bearing) => {
        const { at, uMm, elementId, forceN } = bearing;
        const kN = forceN / 1000;
        const widthPx = bearingWidthPx(bearing, scale);
        const x = scale.xPx(uMm);
        const [from, to] =
          at === "above" ? [scale.topPx - 26, scale.wallTopPx] : [scale.wallFootPx, scale.wallFootPx + 22];
        const towards = uMm < middle ? 1 : -1;
        const y = at === "above" ? scale.topPx - 20 : scale.wallFootPx + 16;
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
            <Lettering
              text={`${tagOf(elementId)} · ${Math.round(kN)} kN`}
              spot={{ xPx: x + towards * (widthPx / 2 + 6), yPx: y, anchor: towards === 1 ? "start" : "end" }}
              sizePx={11}
              fontWeight={600}
            />
          </g>
        );
      })}
    </g>
  );
}
