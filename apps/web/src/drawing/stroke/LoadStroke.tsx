import { memo } from "react";
import { ink } from "../../look/ink.ts";
import { px } from "../px-path.ts";
import { sameDrawn } from "../same-drawn.ts";
import type { ScreenPoint } from "../view-transform.ts";
import { rulingPen, type PenRun } from "./ruling-pen.ts";
import { breakAboveFootPx } from "./stroke-run.ts";

type LoadStrokeProps = {
  /** Fixes how the pen wanders. */
  id: string;
  run: PenRun;
  colour?: string;
  /** The answer is awaited: the old path drops to pencil. */
  faint?: boolean;
  /** The load pulls upwards: the stroke is drawn hollow. */
  lifts?: boolean;
  /** Ends at its break, where a post runs on to its foot. */
  stub?: boolean;
  /** Colour of the long break at the foot, where the load leaves the corners. */
  breakColour?: string | undefined;
};

/** A length of the load path; its width is the force in it. */
export const LoadStroke = memo(function LoadStroke({
  id,
  run,
  colour = ink.ink,
  faint = false,
  lifts = false,
  stub = false,
  breakColour,
}: LoadStrokeProps) {
  return (
    <g className="load-stroke">
      <path
        d={rulingPen(run, id)}
        fill={lifts ? ink.paper : colour}
        stroke={lifts ? colour : "none"}
        strokeWidth={lifts ? 0.9 : undefined}
        fillOpacity={faint ? 0.2 : 0.94}
        strokeOpacity={lifts ? (faint ? 0.2 : 0.94) : undefined}
      />
      {breakColour !== undefined && (
        <LongBreak
          at={{ xPx: run.to.xPx, yPx: run.to.yPx - (stub ? 0 : breakAboveFootPx) }}
          halfPx={run.widthToPx / 2 + 9}
          colour={breakColour}
        />
      )}
    </g>
  );
}, sameDrawn);

/** Two lines across a stroke with a kink between them: the path leaves the corners here. */
function LongBreak({ at: { xPx, yPx }, halfPx, colour }: { at: ScreenPoint; halfPx: number; colour: string }) {
  const line = (y: number) => `M${px(xPx - halfPx)} ${px(y)}H${px(xPx - 3)}l2 -5l3.4 10l2 -5H${px(xPx + halfPx)}`;
  return (
    <g fill="none" strokeLinejoin="miter">
      <rect x={px(xPx - halfPx * 0.8)} y={px(yPx - 2.4)} width={px(halfPx * 1.6)} height={4.8} fill={ink.paper} />
      <path d={line(yPx - 2.4) + line(yPx + 2.4)} stroke={colour} strokeWidth={1.15} />
    </g>
  );
}
