import { memo } from "react";
import { ink } from "../../look/ink.ts";
import { px } from "../px-path.ts";
import { sameDrawn } from "../same-drawn.ts";
import type { ScreenPoint } from "../view-transform.ts";
import { rulingPen } from "./ruling-pen.ts";

type LoadStrokeProps = {
  id: string;
  from: ScreenPoint;
  to: ScreenPoint;
  widthFromPx: number;
  widthToPx: number;
  colour?: string;
  /** The answer is awaited: the old path drops to pencil. */
  faint?: boolean;
  /** Colour of the long break at the foot, where the load leaves the corners. */
  breakColour?: string | undefined;
};

/** A length of the load path; its width is the force in it. */
export const LoadStroke = memo(function LoadStroke(props: LoadStrokeProps) {
  const { id, from, to, widthFromPx, widthToPx, colour = ink.ink, faint = false, breakColour } = props;
  return (
    <g className="load-stroke">
      <path d={rulingPen({ from, to, widthFromPx, widthToPx }, id)} fill={colour} opacity={faint ? 0.2 : 0.94} />
      {breakColour !== undefined && <LongBreak at={{ xPx: to.xPx, yPx: to.yPx - 20 }} halfPx={widthToPx / 2 + 11} colour={breakColour} />}
    </g>
  );
}, sameDrawn);

/** Two lines across a stroke with a kink between them: the path leaves the corners here. */
function LongBreak({ at: { xPx, yPx }, halfPx, colour }: { at: ScreenPoint; halfPx: number; colour: string }) {
  const line = (y: number) =>
    `M${px(xPx - halfPx)} ${px(y)}H${px(xPx - 3)}l2 -5l3.4 10l2 -5H${px(xPx + halfPx)}`;
  return (
    <g fill="none" strokeLinejoin="miter">
      <rect x={px(xPx - halfPx * 0.72)} y={px(yPx - 2.2)} width={px(halfPx * 1.44)} height={4.4} fill={ink.paper} />
      <path d={line(yPx - 2.2) + line(yPx + 2.2)} stroke={colour} strokeWidth={1.1} />
    </g>
  );
}
