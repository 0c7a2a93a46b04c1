import type { PathStroke } from "@cornerway/engine";
import { ink, verdictInk } from "../../look/ink.ts";
import type { ElementVerdict } from "../marks/element-verdicts.ts";
import type { ViewTransform } from "../view-transform.ts";
import { LoadStroke } from "./LoadStroke.tsx";
import { strokeRun } from "./stroke-run.ts";

type PathStrokesProps = {
  strokes: readonly PathStroke[];
  view: ViewTransform;
  waiting: boolean;
  verdicts: ReadonlyMap<string, ElementVerdict>;
};

/** The load path of a view, thickest where the force is greatest. A seat on a post is only a figure. */
export function PathStrokes({ strokes, view, waiting, verdicts }: PathStrokesProps) {
  return strokes
    .filter(({ figureAt }) => figureAt !== "head")
    .map((stroke) => (
      <LoadStroke
        key={stroke.stretch.id}
        id={stroke.stretch.id}
        run={strokeRun(stroke, view)}
        colour={stroke.added ? ink.prussian : ink.ink}
        faint={waiting}
        stub={stroke.stub}
        lifts={stroke.stretch.forceFootKn < 0}
        breakColour={
          stroke.breaks ? verdictInk[verdicts.get(stroke.stretch.elementId)?.verdict ?? "not checked"] : undefined
        }
      />
    ));
}
