import type { Crossing } from "@cornerway/engine";
import { ink } from "../../look/ink.ts";
import { px } from "../px-path.ts";
import { project, toScreen, type ViewTransform } from "../view-transform.ts";
import { strokeWidthPx } from "./stroke-width.ts";

interface CutRoundsProps {
  crossings: readonly Crossing[];
  view: ViewTransform;
  faint: boolean;
}

/** Strokes and strands cut by a plan: rounds as broad as they are wide; hollow where the load goes up. */
export const CutRounds = ({ crossings, view, faint }: CutRoundsProps) => (
  <g className="cut-rounds" opacity={faint ? 0.2 : 0.94}>
    {crossings.map(({ id, at, forceKn }) => {
      const { xPx, yPx } = toScreen(view, project("plan", at));
      const up = forceKn < 0;
      return (
        <circle
          key={id}
          cx={px(xPx)}
          cy={px(yPx)}
          r={px(strokeWidthPx(Math.abs(forceKn), view.pxPerM) / 2)}
          fill={up ? ink.paper : ink.ink}
          stroke={up ? ink.ink : "none"}
          strokeWidth={0.9}
        />
      );
    })}
  </g>
);
