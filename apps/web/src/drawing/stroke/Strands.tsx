import { elevationFaces, type PlacedStrand, type Side } from "@cornerway/engine";
import type { Scheme } from "@cornerway/schema";
import { useMemo } from "react";
import { ink } from "../../look/ink.ts";
import { project, toScreen, type ViewTransform } from "../view-transform.ts";
import { strandPen } from "./strand-pen.ts";
import { strokeWidthPx } from "./stroke-width.ts";

export interface StrandsProps {
  strands: readonly PlacedStrand[];
  scheme: Scheme;
  side: Side;
  view: ViewTransform;
  /** The answer is awaited: pencil. */
  faint: boolean;
}

/** Where the load leaves the posts: shares of it on their way through the sheets of the faces seen. */
export function Strands({ strands, scheme, side, view, faint }: StrandsProps) {
  const seen = useMemo(() => {
    const faces = elevationFaces(scheme, side).filter(({ beyond }) => !beyond);
    const shown = new Set(faces.map(({ container, face }) => `${container.id} ${face}`));
    return strands.filter(({ unitId, wall }) => shown.has(`${unitId} ${wall}`));
  }, [strands, scheme, side]);
  return (
    <g className="strands" fill={ink.ink} opacity={faint ? 0.2 : 0.94}>
      {seen.map(({ id, forceKn, points }) => (
        <path
          key={id}
          d={strandPen(
            points.map((at) => toScreen(view, project(side, at))),
            strokeWidthPx(forceKn, view.pxPerM),
            id,
          )}
        />
      ))}
    </g>
  );
}
