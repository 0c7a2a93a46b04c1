import { useMemo } from "react";
import type { Scheme } from "@cornerway/schema";
import { dash, ink } from "../../look/ink.ts";
import { Cloud } from "../cloud/Cloud.tsx";
import { schemeChanges } from "../elevation/scheme-changes.ts";
import { inset, polygonPath, rectPath } from "../px-path.ts";
import { toScreen, type ViewPoint, type ViewTransform } from "../view-transform.ts";
import { boundsPx } from "./PlanUnitDrawing.tsx";
import { planModel } from "./plan-model.ts";

type PlanProposedProps = { before: Scheme; after: Scheme; storey: number; view: ViewTransform };

/** What a request would add on this storey: dashed in prussian, inside the engineer's cloud. */
export function PlanProposed({ before, after, storey, view }: PlanProposedProps) {
  const { units, posts } = useMemo(() => {
    const { added, changed } = schemeChanges(before, after);
    const model = planModel(after, storey);
    const touched = (id: string) => added.has(id) || changed.has(id);
    return {
      units: model.units.filter(({ container }) => touched(container.id)).map(({ outline }) => outline),
      posts: model.posts.filter(({ post }) => touched(post.id)).map(({ at }) => at),
    };
  }, [before, after, storey]);
  const points: readonly ViewPoint[] = [...units.flat(), ...posts];
  if (points.length === 0) return null;
  return (
    <g className="proposed">
      {units.map((outline, index) => (
        <path
          key={index}
          d={polygonPath(outline.map((point) => toScreen(view, point)))}
          fill="none"
          stroke={ink.prussian}
          strokeWidth={1.2}
          strokeDasharray={dash.proposed}
        />
      ))}
      {posts.map((at, index) => {
        const { xPx, yPx } = toScreen(view, at);
        return (
          <path
            key={index}
            d={rectPath({ xPx: xPx - 3.5, yPx: yPx - 3.5, widthPx: 7, heightPx: 7 })}
            fill={ink.paper}
            stroke={ink.prussian}
            strokeWidth={1.2}
            strokeDasharray="3 2"
          />
        );
      })}
      <Cloud rect={inset(boundsPx(points, view), -16)} />
    </g>
  );
}
