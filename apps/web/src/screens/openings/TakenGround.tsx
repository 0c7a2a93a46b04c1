import { useId } from "react";
import { polygonPath } from "../../drawing/px-path.ts";
import { Hexagon } from "../../look/Hexagon.tsx";
import { ink, weight } from "../../look/ink.ts";
import type { ChartFieldProps } from "./chart-field-props.ts";
import { betweenPosts, takenGround } from "./taken-ground.ts";

/** Places and widths that would meet an opening that is there already: kept ground, no verdict of strength. */
export function TakenGround({ side, scale, sill }: ChartFieldProps) {
  const clip = useId();
  const taken = takenGround(side, sill, scale);
  const path = taken.map(({ corners }) => polygonPath(corners)).join("");
  return (
    <g aria-hidden="true">
      <clipPath id={clip}>
        <path d={polygonPath(betweenPosts(side, scale))} />
      </clipPath>
      <g clipPath={`url(#${clip})`}>
        <path d={path} fill="none" stroke={ink.ink} strokeWidth={2 * weight.fine} />
        <path d={path} fill={ink.shade} />
      </g>
      {taken.map(({ opening, footPx }) => (
        <Hexagon key={opening.id} tag={opening.tag} xPx={footPx} yPx={scale.basePx - ABOVE_PX} />
      ))}
    </g>
  );
}

/** Height of an opening's sign above the line of no width, px. */
const ABOVE_PX = 18;
