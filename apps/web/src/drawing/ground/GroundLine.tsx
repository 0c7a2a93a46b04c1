import { memo } from "react";
import { ink, weight } from "../../look/ink.ts";
import { linePath } from "../px-path.ts";
import { groundClumps } from "./ground-clumps.ts";

/** The ground line with its hatch of three clumps in turn, px. */
export const GroundLine = memo(function GroundLine({
  fromPx,
  toPx,
  groundPx,
}: {
  fromPx: number;
  toPx: number;
  groundPx: number;
}) {
  const { strokes, stones } = groundClumps(fromPx, toPx, groundPx);
  return (
    <g aria-hidden="true">
      <path
        d={strokes}
        fill="none"
        stroke={ink.graphite}
        strokeWidth={0.55}
        strokeLinecap="round"
        strokeOpacity={0.9}
      />
      {stones.map(({ xPx, yPx }, index) => (
        <circle key={index} cx={xPx} cy={yPx} r={0.6} fill={ink.graphite} />
      ))}
      <path
        d={linePath(fromPx, groundPx, toPx, groundPx)}
        stroke={ink.ink}
        strokeWidth={weight.border}
        strokeLinecap="round"
      />
    </g>
  );
});
