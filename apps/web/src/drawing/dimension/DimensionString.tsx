import { memo } from "react";
import { ink, weight } from "../../look/ink.ts";
import { linePath } from "../px-path.ts";
import { sameDrawn } from "../same-drawn.ts";

type DimensionStringProps = {
  /** Places along the line, px; a slash stands at each. */
  placesPx: readonly number[];
  /** Where the line runs, px: a height for a level line, a distance from the left for an upright one. */
  atPx: number;
  upright?: boolean;
};

/** The line of a dimension string with its slashes; the figures are placed with the other lettering. */
export const DimensionString = memo(function DimensionString({
  placesPx,
  atPx,
  upright = false,
}: DimensionStringProps) {
  const first = Math.min(...placesPx) - 6;
  const last = Math.max(...placesPx) + 6;
  const line = upright ? linePath(atPx, first, atPx, last) : linePath(first, atPx, last, atPx);
  const slashes = placesPx.map((place) =>
    upright ? linePath(atPx - 4, place + 4, atPx + 4, place - 4) : linePath(place - 4, atPx + 4, place + 4, atPx - 4),
  );
  return (
    <g fill="none" strokeLinecap="round">
      <path d={line} stroke={ink.graphite} strokeWidth={weight.fine} />
      <path d={slashes.join("")} stroke={ink.ink} strokeWidth={1.3} />
    </g>
  );
}, sameDrawn);
