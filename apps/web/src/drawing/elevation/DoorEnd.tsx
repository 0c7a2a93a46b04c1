import { onPaper, type ElevationFace } from "@cornerway/engine";
import { ink } from "../../look/ink.ts";
import { DoorWeld } from "../objects/DoorWeld.tsx";
import { xToPx, yToPx } from "../paper-to-px.ts";
import { linePath, px } from "../px-path.ts";
import type { ViewTransform } from "../view-transform.ts";

/** The door end as it comes: two leaves, two locking bars on each with their cams and handles. */
export function DoorEnd({ face, view }: { face: ElevationFace; view: ViewTransform }) {
  const zone = face.placed.dimensions.sheetZone("door");
  const x = (share: number) => xToPx(view, onPaper(face, zone.u0 + (zone.u1 - zone.u0) * share));
  const top = yToPx(view, face.placed.baseZMm + zone.v1);
  const foot = yToPx(view, face.placed.baseZMm + zone.v0);
  const upright = (share: number, overPx = 0) => linePath(x(share), top - overPx, x(share), foot + overPx);
  const handle = foot - (foot - top) * 0.42;
  const line = face.beyond ? ink.pencil : ink.ink;
  const folds = [0.03, 0.19, 0.31, 0.47, 0.53, 0.69, 0.81, 0.97].map((share) => upright(share)).join("");
  const bars = [0.09, 0.4, 0.6, 0.91];
  return (
    <g fill="none" stroke={line}>
      <path d={folds} stroke={face.beyond ? ink.pencil : ink.slate} strokeWidth={0.45} strokeOpacity={0.7} />
      <path d={upright(0.5)} strokeWidth={0.9} />
      <path d={bars.map((share) => upright(share, 3)).join("")} strokeWidth={1} />
      <path
        d={bars.flatMap((share) => [cam(x(share), top - 2), cam(x(share), foot - 2)]).join("")}
        fill={line}
        stroke="none"
      />
      <path
        d={[0.09, 0.6].map((share) => `M${px(x(share))} ${px(handle)}H${px(x(share + 0.31))}`).join("")}
        strokeWidth={0.7}
      />
      {face.container.doors === "welded shut" &&
        [0.01, 0.5, 0.99].map((share) => <DoorWeld key={share} xPx={x(share)} topPx={top} footPx={foot} />)}
    </g>
  );
}

const cam = (xPx: number, yPx: number): string => `M${px(xPx - 2.2)} ${px(yPx)}h4.4v4h-4.4Z`;
