import type { Pad } from "@cornerway/schema";
import { cosDegThousandths, sinDegThousandths } from "@cornerway/engine";
import { ink } from "../../look/ink.ts";
import { DrawnElement } from "../DrawnElement.tsx";
import { sectionWidthMm } from "../elevation/elevation-posts.ts";
import type { ElementSetting } from "../elevation/ElevationUnit.tsx";
import { polygonPath, rectPath, type RectPx } from "../px-path.ts";
import { toScreen, type ViewPoint } from "../view-transform.ts";
import { boundsPx } from "./PlanUnitDrawing.tsx";
import type { PlanModel } from "./plan-model.ts";

/** Pads under the ground storey, dashed since they lie below the cut. */
export function PlanPads({ model, view, nameOf, selectedId, entryId, still }: { model: PlanModel } & ElementSetting) {
  return model.pads.map((pad) => {
    const outline = padOutline(pad);
    return (
      <DrawnElement
        key={pad.id}
        id={pad.id}
        kind="pad"
        {...nameOf(pad.id)}
        level={1}
        selected={selectedId === pad.id}
        entry={entryId === pad.id}
        rect={boundsPx(outline, view)}
        still={still}
      >
        <path
          d={polygonPath(outline.map((point) => toScreen(view, point)))}
          fill="none"
          stroke={ink.graphite}
          strokeWidth={0.6}
          strokeDasharray="3 2"
        />
      </DrawnElement>
    );
  });
}

/** The four corners of a pad in plan, turned as it lies. */
function padOutline({ xUm, yUm, lengthUm, widthUm, turnMdeg }: Pad): ViewPoint[] {
  const cos = cosDegThousandths(turnMdeg);
  const sin = sinDegThousandths(turnMdeg);
  const corner = (along: 1 | -1, across: 1 | -1): ViewPoint => {
    const [x, y] = [(along * lengthUm) / 2000, (across * widthUm) / 2000];
    return { uMm: xUm / 1000 + x * cos - y * sin, vMm: yUm / 1000 + x * sin + y * cos };
  };
  return [corner(-1, -1), corner(1, -1), corner(1, 1), corner(-1, 1)];
}

/** Added posts cut through: the section in prussian. */
export function PlanPosts({ model, view, nameOf, selectedId, entryId, still }: { model: PlanModel } & ElementSetting) {
  return model.posts.map(({ post, at }) => {
    const { xPx, yPx } = toScreen(view, at);
    const size = Math.max(5, (sectionWidthMm(post.section) * view.pxPerM) / 1000);
    const rect: RectPx = { xPx: xPx - size / 2, yPx: yPx - size / 2, widthPx: size, heightPx: size };
    return (
      <DrawnElement
        key={post.id}
        id={post.id}
        kind="post"
        {...nameOf(post.id)}
        level={1}
        selected={selectedId === post.id}
        entry={entryId === post.id}
        rect={rect}
        still={still}
      >
        <path d={rectPath(rect)} fill={ink.prussian} />
      </DrawnElement>
    );
  });
}
