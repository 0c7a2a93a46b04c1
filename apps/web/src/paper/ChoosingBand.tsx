import type { PointMm } from "@cornerway/schema";
import { rectToPx } from "../drawing/paper-to-px.ts";
import { px } from "../drawing/px-path.ts";
import { project, type Projection } from "../drawing/view-transform.ts";
import { ink } from "../look/ink.ts";
import type { LaidViews } from "./lay-views.ts";

/** The rectangle drawn round what is to be chosen, in pencil. */
export function ChoosingBand({
  band: { projection, from, to },
  views,
}: {
  band: { projection: Projection; from: PointMm; to: PointMm };
  views: LaidViews;
}) {
  const [a, b] = [project(projection, from), project(projection, to)];
  const rect = rectToPx(views[projection === "plan" ? "plan" : "elevation"].transform, {
    u0Mm: Math.min(a.uMm, b.uMm),
    u1Mm: Math.max(a.uMm, b.uMm),
    z0Mm: Math.min(a.vMm, b.vMm),
    z1Mm: Math.max(a.vMm, b.vMm),
  });
  return (
    <rect
      className="choosing-band"
      x={px(rect.xPx)}
      y={px(rect.yPx)}
      width={px(rect.widthPx)}
      height={px(rect.heightPx)}
      fill="none"
      stroke={ink.graphite}
      strokeWidth={0.75}
      strokeDasharray="5 3"
      pointerEvents="none"
    />
  );
}
