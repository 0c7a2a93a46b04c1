import type { PlacedStrand } from "@cornerway/engine";
import type { PointMm } from "@cornerway/schema";
import { ink } from "../../look/ink.ts";
import type { ScreenPoint } from "../view-transform.ts";
import { strandPen } from "./strand-pen.ts";
import { strokeWidthPx } from "./stroke-width.ts";

export interface StrandsProps {
  /** Those the view shows. */
  strands: readonly PlacedStrand[];
  toPx: (at: PointMm) => ScreenPoint;
  pxPerM: number;
  /** The answer is awaited: pencil. */
  faint: boolean;
}

/** Where the load leaves the posts: shares of it on their way through the sheets of the faces seen. */
export const Strands = ({ strands, toPx, pxPerM, faint }: StrandsProps) => (
  <g className="strands" fill={ink.ink} opacity={faint ? 0.2 : 0.94}>
    {strands.map(({ id, forceKn, points }) => (
      <path key={id} d={strandPen(points.map(toPx), strokeWidthPx(forceKn, pxPerM), id)} />
    ))}
  </g>
);
