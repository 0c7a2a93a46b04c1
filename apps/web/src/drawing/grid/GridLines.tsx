import { memo } from "react";
import { dash, ink, weight } from "../../look/ink.ts";
import { px } from "../px-path.ts";
import { sameDrawn } from "../same-drawn.ts";
import { spreadApart } from "./spread-apart.ts";

type GridLinesProps = {
  lines: readonly { label: string; atPx: number }[];
  /** Upright lines carry their bubble at the top (`bubblePx` a height); level ones at the left. */
  upright: boolean;
  bubblePx: number;
  toPx: number;
  radiusPx?: number;
};

/** The field begins at 0 either way: no circle stands on its border, px. */
const edgePx = 3;

/** Grid lines, dash-dot, each with its circle; circles of close lines step aside and their lines jog. */
export const GridLines = memo(function GridLines({ lines, upright, bubblePx, toPx, radiusPx = 11 }: GridLinesProps) {
  const apartPx = radiusPx * 2 + 4;
  const places = lines.map(({ atPx }) => atPx);
  // Looked into more closely, the first lines may lie before the field: these are not brought into it.
  const leastPx = (places[0] ?? 0) < 0 ? -Infinity : radiusPx + edgePx;
  const bubbles = spreadApart(places, apartPx).map((at, index) => Math.max(at, leastPx + index * apartPx));
  return (
    <g>
      {lines.map(({ label, atPx }, index) => {
        const bubble = bubbles[index] ?? atPx;
        const from = bubblePx + radiusPx;
        const line = upright
          ? `M${px(bubble)} ${px(from)}L${px(atPx)} ${px(from + 9)}V${px(toPx)}`
          : `M${px(from)} ${px(bubble)}L${px(from + 9)} ${px(atPx)}H${px(toPx)}`;
        const [cx, cy] = upright ? [bubble, bubblePx] : [bubblePx, bubble];
        return (
          <g key={label}>
            <path d={line} fill="none" stroke={ink.pencil} strokeWidth={0.6} strokeDasharray={dash.centre} />
            <circle cx={px(cx)} cy={px(cy)} r={radiusPx} fill={ink.paper} stroke={ink.ink} strokeWidth={weight.edge} />
            <text
              x={px(cx)}
              y={px(cy + radiusPx * 0.37)}
              textAnchor="middle"
              fontSize={radiusPx > 10 ? 12 : 10}
              fontWeight="500"
              fill={ink.ink}
            >
              {label}
            </text>
          </g>
        );
      })}
    </g>
  );
}, sameDrawn);
