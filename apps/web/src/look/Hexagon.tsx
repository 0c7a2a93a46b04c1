import { memo } from "react";
import { ink } from "./ink.ts";
import { hexagonHalfPx } from "./hexagon-size.ts";

/** Tag of an opening, a post or a jamb, centred at a point of a drawing; dashed while not checked. */
export const Hexagon = memo(function Hexagon(props: {
  xPx: number;
  yPx: number;
  tag: string;
  colour?: string;
  unchecked?: boolean;
}) {
  const { xPx, yPx, tag, colour = ink.ink } = props;
  const w = Math.max(hexagonHalfPx.widthPx, tag.length * 3.6 + 4);
  const h = hexagonHalfPx.heightPx;
  return (
    <g className="tag">
      <path
        d={`M${xPx - w} ${yPx}L${xPx - w + 5} ${yPx - h}H${xPx + w - 5}L${xPx + w} ${yPx}L${xPx + w - 5} ${yPx + h}H${xPx - w + 5}Z`}
        fill={ink.slip}
        stroke={colour}
        strokeWidth="1"
        strokeDasharray={props.unchecked ? "3 2" : undefined}
      />
      <text x={xPx} y={yPx + 3.4} textAnchor="middle" fontSize="9.5" fontWeight="600" fill={colour}>
        {tag}
      </text>
    </g>
  );
});
