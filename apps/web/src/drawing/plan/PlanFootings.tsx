import type { Pad } from "@cornerway/schema";
import { cosDegThousandths, sinDegThousandths, sectionWidthMm, type PlanModel } from "@cornerway/engine";
import { dash, ink } from "../../look/ink.ts";
import { DrawnElement } from "../DrawnElement.tsx";
import { itemOf, type ElementSetting } from "../element-setting.ts";
import { polygonPath, polylinePath, rectPath, type RectPx } from "../px-path.ts";
import { toScreen, type ScreenPoint, type ViewPoint, type ViewTransform } from "../view-transform.ts";
import { boundsPx } from "./PlanUnitDrawing.tsx";

/** Pads under the ground storey, dashed since they lie below the cut. */
export function PlanPads({ model, ...setting }: { model: PlanModel } & ElementSetting) {
  return model.pads.map((pad) => {
    const outline = padOutline(pad);
    return (
      <DrawnElement key={pad.id} {...itemOf(setting, pad.id, "pad")} rect={boundsPx(outline, setting.view)}>
        <path
          d={polygonPath(outline.map((point) => toScreen(setting.view, point)))}
          fill="none"
          stroke={ink.graphite}
          strokeWidth={pad.support === undefined ? 0.6 : 0.9}
          strokeDasharray="3 2"
        />
        {pad.support !== undefined && <SupportSign pad={pad} outline={outline} view={setting.view} />}
      </DrawnElement>
    );
  });
}

/** A strip has its centre line, a slab a second edge within the first. */
function SupportSign({ pad, outline, view }: { pad: Pad; outline: readonly ViewPoint[]; view: ViewTransform }) {
  const points = outline.map((point) => toScreen(view, point));
  if (pad.support === "slab")
    return <path d={polygonPath(inwards(points, 3))} fill="none" stroke={ink.graphite} strokeWidth={0.5} />;
  const [a, b, c, d] = points;
  if (a === undefined || b === undefined || c === undefined || d === undefined) return null;
  const alongLength = pad.lengthUm >= pad.widthUm;
  const ends = alongLength ? [middle(a, d), middle(b, c)] : [middle(a, b), middle(c, d)];
  return <path d={polylinePath(ends)} stroke={ink.graphite} strokeWidth={0.6} strokeDasharray={dash.centre} />;
}

const middle = (a: ScreenPoint, b: ScreenPoint): ScreenPoint => ({
  xPx: (a.xPx + b.xPx) / 2,
  yPx: (a.yPx + b.yPx) / 2,
});

/** Corners drawn so many px towards the middle of all. */
function inwards(points: readonly ScreenPoint[], byPx: number): ScreenPoint[] {
  const x = points.reduce((sum, { xPx }) => sum + xPx, 0) / points.length;
  const y = points.reduce((sum, { yPx }) => sum + yPx, 0) / points.length;
  return points.map(({ xPx, yPx }) => ({ xPx: xPx - Math.sign(xPx - x) * byPx, yPx: yPx - Math.sign(yPx - y) * byPx }));
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
export function PlanPosts({ model, ...setting }: { model: PlanModel } & ElementSetting) {
  return model.posts.map(({ post, at }) => {
    const { xPx, yPx } = toScreen(setting.view, at);
    const size = Math.max(5, (sectionWidthMm(post.section) * setting.view.pxPerM) / 1000);
    const rect: RectPx = { xPx: xPx - size / 2, yPx: yPx - size / 2, widthPx: size, heightPx: size };
    return (
      <DrawnElement key={post.id} {...itemOf(setting, post.id, "post")} rect={rect}>
        <path d={rectPath(rect)} fill={ink.prussian} />
      </DrawnElement>
    );
  });
}
