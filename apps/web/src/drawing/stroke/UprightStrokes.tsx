import type { SolvedStretch } from "@cornerway/engine";
import type { PointMm } from "@cornerway/schema";
import { ink } from "../../look/ink.ts";
import type { ScreenPoint } from "../view-transform.ts";
import { LoadStroke } from "./LoadStroke.tsx";
import { strokeWidthPx } from "./stroke-width.ts";
import { widthsOnTheWay } from "./stroke-run.ts";

interface UprightStrokesProps {
  uprights: readonly SolvedStretch[];
  toPx: (at: PointMm) => ScreenPoint;
  pxPerM: number;
  faint: boolean;
}

/** Strokes of posts on a picture or in a section: as wide as on an elevation of this scale. */
export const UprightStrokes = ({ uprights, toPx, pxPerM, faint }: UprightStrokesProps) =>
  uprights.map((stretch) => (
    <LoadStroke
      key={stretch.id}
      id={stretch.id}
      run={{
        from: toPx(stretch.from),
        to: toPx(stretch.to),
        widthFromPx: strokeWidthPx(Math.abs(stretch.forceTopKn), pxPerM),
        widthToPx: strokeWidthPx(Math.abs(stretch.forceFootKn), pxPerM),
        onTheWay: widthsOnTheWay(stretch, pxPerM),
      }}
      colour={stretch.via === "added post" ? ink.prussian : ink.ink}
      faint={faint}
      lifts={stretch.forceFootKn < 0}
    />
  ));
