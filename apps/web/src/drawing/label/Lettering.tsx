import { memo } from "react";
import { ink } from "../../look/ink.ts";
import { px } from "../px-path.ts";
import { sameDrawn } from "../same-drawn.ts";
import type { Spot } from "./place-labels.ts";

type LetteringProps = {
  text: string;
  spot: Spot;
  sizePx: number;
  colour?: string;
  fontWeight?: number;
  trackingEm?: number;
  /** The element it names, by id. */
  of?: string | undefined;
  /** Colour round the letters, so that lines stop short of them; `none` for none. */
  halo?: string;
};

/** One line of lettering on a drawing. */
export const Lettering = memo(function Lettering(props: LetteringProps) {
  const { text, spot, sizePx, colour = ink.ink, fontWeight = 500, trackingEm = 0.02, halo = ink.paper } = props;
  const x = px(spot.xPx);
  const y = px(spot.yPx);
  return (
    <text
      data-of={props.of}
      x={x}
      y={y}
      textAnchor={spot.anchor}
      transform={spot.turned ? `rotate(-90 ${x} ${y})` : undefined}
      fontSize={sizePx}
      fontWeight={fontWeight}
      letterSpacing={`${trackingEm}em`}
      fill={colour}
      {...(halo === "none" ? {} : { stroke: halo, strokeWidth: 4, strokeLinejoin: "round", paintOrder: "stroke" })}
    >
      {text}
    </text>
  );
}, sameDrawn);
