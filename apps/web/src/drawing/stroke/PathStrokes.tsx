import { ink, verdictInk } from "../../look/ink.ts";
import type { ElementVerdict } from "../marks/element-verdicts.ts";
import { toScreen, type ViewTransform } from "../view-transform.ts";
import { LoadStroke } from "./LoadStroke.tsx";
import type { PathStroke } from "./path-strokes.ts";
import { strokeWidthPx } from "./stroke-width.ts";

type PathStrokesProps = {
  strokes: readonly PathStroke[];
  view: ViewTransform;
  waiting: boolean;
  verdicts: ReadonlyMap<string, ElementVerdict>;
};

/** The load path of a view, thickest where the force is greatest. */
export function PathStrokes({ strokes, view, waiting, verdicts }: PathStrokesProps) {
  return strokes.map(({ stretch, from, to, added, breaks }) => (
    <LoadStroke
      key={stretch.id}
      id={stretch.id}
      from={toScreen(view, from)}
      to={toScreen(view, to)}
      widthFromPx={strokeWidthPx(stretch.forceTopKn, view.pxPerM)}
      widthToPx={strokeWidthPx(stretch.forceFootKn, view.pxPerM)}
      colour={added ? ink.prussian : ink.ink}
      faint={waiting}
      breakColour={breaks ? verdictInk[verdicts.get(stretch.elementId)?.verdict ?? "not checked"] : undefined}
    />
  ));
}
