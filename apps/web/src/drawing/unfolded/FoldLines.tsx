import { dash, ink } from "../../look/ink.ts";
import { rectToPx } from "../paper-to-px.ts";
import { linePath } from "../px-path.ts";
import type { ViewTransform } from "../view-transform.ts";
import type { UnfoldedModel } from "./unfolded-model.ts";

/** Thin lines from corner to corner across the paper between two faces: where the box folds. */
export function FoldLines({ model, view }: { model: UnfoldedModel; view: ViewTransform }) {
  const rects = model.flats.map(({ face, outline }) => ({ face, ...rectToPx(view, outline) }));
  const middle = rects.find(({ face }) => face === "right");
  if (middle === undefined) return null;
  const low = rects.find(({ face }) => face === "floor") ?? middle;
  const high = rects.find(({ face }) => face === "left") ?? middle;
  const front = rects.find(({ face }) => face === "front") ?? middle;
  const door = rects.find(({ face }) => face === "door") ?? middle;
  const uprights = [middle.xPx, middle.xPx + middle.widthPx].map((x) =>
    linePath(x, high.yPx, x, low.yPx + low.heightPx),
  );
  const levels = [middle.yPx, middle.yPx + middle.heightPx].map((y) =>
    linePath(front.xPx, y, door.xPx + door.widthPx, y),
  );
  return (
    <path
      d={[...uprights, ...levels].join("")}
      fill="none"
      stroke={ink.pencil}
      strokeWidth={0.6}
      strokeDasharray={dash.hidden}
      pointerEvents="none"
    />
  );
}
