import { elevationFaces } from "@cornerway/engine";
import { memo, useMemo } from "react";
import type { Scheme } from "@cornerway/schema";
import { dash, ink } from "../../look/ink.ts";
import type { Side } from "../contract.ts";
import { rectToPx } from "../paper-to-px.ts";
import { rectPath } from "../px-path.ts";
import type { ViewTransform } from "../view-transform.ts";

/** The scheme as it was, under the present one: outlines and openings dashed in pencil. */
export const GhostElevation = memo(function GhostElevation({
  scheme,
  side,
  view,
}: {
  scheme: Scheme;
  side: Side;
  view: ViewTransform;
}) {
  const faces = useMemo(() => elevationFaces(scheme, side), [scheme, side]);
  const paths = faces.flatMap((face) => [face, ...face.openings]).map((place) => rectPath(rectToPx(view, place)));
  return (
    <path
      className="ghost"
      d={paths.join("")}
      fill="none"
      stroke={ink.pencil}
      strokeWidth={0.9}
      strokeDasharray={dash.hidden}
    />
  );
});
