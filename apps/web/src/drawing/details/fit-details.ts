import type { Detail } from "@cornerway/engine";
import { statedScale } from "../../paper/lens.ts";
import { noteWidthPx } from "./detail-notes.ts";
import type { ViewTransform } from "../view-transform.ts";

export interface DetailRoomPx {
  leftPx: number;
  topPx: number;
  widthPx: number;
  heightPx: number;
}

/** Scales of details, px a metre: 1:2, 1:4, 1:5, 1:8, 1:10, 1:12, 1:16, 1:20, 1:24, 1:25, 1:50. */
const scales = [2500, 1250, 1000, 625, 500, 416.667, 312.5, 250, 208.333, 200, 100];
/** Room beside a detail for its notes and dimensions, and over its title, px. */
const besidePx = { left: 40, right: 30 + noteWidthPx, top: 34, foot: 58 };

/** Of its scale alone in the place, what a detail keeps at least beside others. */
const leastOfScale = 0.6;

/** How many of the first details stand side by side in one place: none of them much smaller than alone. */
export function detailsTogether(details: readonly Detail[], { widthPx, heightPx }: DetailRoomPx): number {
  const extents = details.map(extentOf);
  const isRoomy = (count: number) =>
    extents
      .slice(0, count)
      .every((each) => scaleOf(each, widthPx / count, heightPx) >= leastOfScale * scaleOf(each, widthPx, heightPx));
  return details.map((_, at) => at + 1).findLast(isRoomy) ?? 1;
}

/** Details side by side in one place, each at the largest scale at which it has room. */
export function fittedDetails(details: readonly Detail[], { leftPx, topPx, widthPx, heightPx }: DetailRoomPx) {
  const eachPx = widthPx / Math.max(1, details.length);
  return details.map((detail, at) => {
    const extent = extentOf(detail);
    const pxPerM = scaleOf(extent, eachPx, heightPx);
    const left = leftPx + at * eachPx;
    const view: ViewTransform = {
      pxPerM,
      originXPx:
        left + besidePx.left + (eachPx - besidePx.left - besidePx.right) / 2 - (extent.middleUMm * pxPerM) / 1000,
      originYPx:
        topPx + besidePx.top + (heightPx - besidePx.top - besidePx.foot) / 2 + (extent.middleZMm * pxPerM) / 1000,
    };
    return { detail, view, leftPx: left, footPx: topPx + heightPx, scale: statedScale(pxPerM) };
  });
}

/** The largest scale at which a detail has room with what stands beside it, px a metre. */
const scaleOf = ({ wideMm, highMm }: Extent, widthPx: number, heightPx: number): number =>
  scales.find(
    (pxPerM) =>
      (wideMm * pxPerM) / 1000 <= widthPx - besidePx.left - besidePx.right &&
      (highMm * pxPerM) / 1000 <= heightPx - besidePx.top - besidePx.foot,
  ) ??
  scales.at(-1) ??
  100;

type Extent = ReturnType<typeof extentOf>;

function extentOf({ parts }: Detail) {
  const us = parts.flatMap(({ u0Mm, u1Mm }) => [u0Mm, u1Mm]);
  const zs = parts.flatMap(({ z0Mm, z1Mm }) => [z0Mm, z1Mm]);
  const [left, right, low, high] = [Math.min(...us), Math.max(...us), Math.min(...zs), Math.max(...zs)];
  return { wideMm: right - left, highMm: high - low, middleUMm: (left + right) / 2, middleZMm: (low + high) / 2 };
}
