import { planModel } from "@cornerway/engine";
import { useMemo } from "react";
import type { Scheme } from "@cornerway/schema";
import { dash, ink } from "../../look/ink.ts";
import { Cloud } from "../cloud/Cloud.tsx";
import { schemeChanges } from "../elevation/scheme-changes.ts";
import { planEye } from "../objects/object-eye.ts";
import { objectInk } from "../objects/object-ink.ts";
import { asProposed, InkPaths } from "../objects/Objects.tsx";
import { boundsOf } from "../objects/px-shapes.ts";
import { inset, polygonPath, rectPath } from "../px-path.ts";
import { toScreen, type ViewPoint, type ViewTransform } from "../view-transform.ts";
import { useUnits } from "../../units/use-units.ts";
import { boundsPx } from "./PlanUnitDrawing.tsx";

type PlanProposedProps = { before: Scheme; after: Scheme; storey: number; view: ViewTransform };

/** What a request would add on this storey: dashed in prussian, inside the engineer's cloud. */
export function PlanProposed({ before, after, storey, view }: PlanProposedProps) {
  const system = useUnits();
  const { units, posts, added } = useMemo(() => {
    const { added, changed } = schemeChanges(before, after);
    const model = planModel(after, storey);
    const touched = (id: string) => added.has(id) || changed.has(id);
    return {
      units: model.units.filter(({ container }) => touched(container.id)).map(({ outline }) => outline),
      posts: model.posts.filter(({ post }) => touched(post.id)).map(({ at }) => at),
      added: model.objects
        .filter(({ object }) => touched(object.id))
        .map(({ object, hidden }) => ({ id: object.id, ...objectInk(object, planEye(view), hidden, system) })),
    };
  }, [before, after, storey, view, system]);
  const points: readonly ViewPoint[] = [...units.flat(), ...posts];
  if (points.length + added.length === 0) return null;
  const rects = [...(points.length === 0 ? [] : [boundsPx(points, view)]), ...added.map(({ rect }) => rect)];
  const corners = rects.flatMap(({ xPx, yPx, widthPx, heightPx }) => [
    { xPx, yPx },
    { xPx: xPx + widthPx, yPx: yPx + heightPx },
  ]);
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
      {added.map(({ id, paths }) => (
        <InkPaths key={id} paths={asProposed(paths)} />
      ))}
      <Cloud rect={inset(boundsOf(corners), -16)} />
    </g>
  );
}
