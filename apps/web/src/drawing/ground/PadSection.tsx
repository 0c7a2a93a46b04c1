import { memo } from "react";
import { dash, ink } from "../../look/ink.ts";
import { px, rectPath, type RectPx } from "../px-path.ts";
import { sameDrawn } from "../same-drawn.ts";
import { concreteStipple } from "./concrete-stipple.ts";

type PadSectionProps = { rect: RectPx; seed: string; proposed?: boolean; behind?: boolean };

/** A pad in section: concrete, dashed in prussian while only proposed; one that stands farther back is an outline. */
export const PadSection = memo(function PadSection({ rect, seed, proposed = false, behind = false }: PadSectionProps) {
  if (behind)
    return (
      <path
        d={rectPath(rect)}
        fill={ink.paper}
        stroke={ink.graphite}
        strokeWidth={0.75}
        strokeDasharray={dash.hidden}
      />
    );
  const { triangles, dots } = concreteStipple(rect, seed);
  return (
    <>
      <rect
        x={px(rect.xPx)}
        y={px(rect.yPx)}
        width={px(rect.widthPx)}
        height={px(rect.heightPx)}
        fill={ink.slip}
        stroke={proposed ? ink.prussian : ink.ink}
        strokeWidth={1.3}
        strokeDasharray={proposed ? "5 3" : undefined}
      />
      <path d={triangles} fill="none" stroke={ink.graphite} strokeWidth={0.5} />
      {dots.map(({ xPx, yPx }, index) => (
        <circle key={index} cx={xPx} cy={yPx} r={0.55} fill={ink.graphite} />
      ))}
    </>
  );
}, sameDrawn);
