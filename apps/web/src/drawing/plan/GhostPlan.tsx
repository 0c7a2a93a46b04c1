import { planModel, storeyLike } from "@cornerway/engine";
import { memo, useMemo } from "react";
import type { Scheme } from "@cornerway/schema";
import { dash, ink } from "../../look/ink.ts";
import { polygonPath } from "../px-path.ts";
import { toScreen, type ViewTransform } from "../view-transform.ts";

/** The scheme as it was, under the plan of the present one: outlines of its units dashed in pencil. */
export const GhostPlan = memo(function GhostPlan({
  scheme,
  like,
  storey,
  view,
}: {
  scheme: Scheme;
  /** The present scheme, whose storey is cut. */
  like: Scheme;
  storey: number;
  view: ViewTransform;
}) {
  const outlines = useMemo(() => {
    const then = storeyLike(scheme, like, storey);
    return then === null ? [] : planModel(scheme, then).units.map(({ outline }) => outline);
  }, [scheme, like, storey]);
  return (
    <path
      className="ghost"
      d={outlines.map((outline) => polygonPath(outline.map((point) => toScreen(view, point)))).join("")}
      fill="none"
      stroke={ink.pencil}
      strokeWidth={0.9}
      strokeDasharray={dash.hidden}
    />
  );
});
