import type { Detail } from "@cornerway/engine";
import { statedScale } from "../../paper/lens.ts";
import type { ViewTransform } from "../view-transform.ts";

export interface DetailRoomPx {
  leftPx: number;
  topPx: number;
  widthPx: number;
  heightPx: number;
}

/** Scales of details, px a metre: 1:2, 1:5, 1:10, 1:20, 1:25, 1:50. */
const scales = [2500, 1000, 500, 250, 200, 100];
/** Room beside a detail for its notes and dimensions, and over its title, px. */
const besidePx = { left: 40, right: 104, top: 24, foot: 62 };

/** Details side by side in one place, all at the largest scale at which each has room. */
export function fittedDetails(details: readonly Detail[], { leftPx, topPx, widthPx, heightPx }: DetailRoomPx) {
  const eachPx = widthPx / Math.max(1, details.length);
  const extents = details.map(extentOf);
  const fits = (pxPerM: number) =>
    extents.every(
      ({ wideMm, highMm }) =>
        (wideMm * pxPerM) / 1000 <= eachPx - besidePx.left - besidePx.right &&
        (highMm * pxPerM) / 1000 <= heightPx - besidePx.top - besidePx.foot,
    );
  const pxPerM = scales.find(fits) ?? scales.at(-1) ?? 100;
  return details.map((detail, at) => {
    const extent = extents[at] ?? extentOf(detail);
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

function extentOf({ parts }: Detail) {
  const us = parts.flatMap(({ u0Mm, u1Mm }) => [u0Mm, u1Mm]);
  const zs = parts.flatMap(({ z0Mm, z1Mm }) => [z0Mm, z1Mm]);
  const [left, right, low, high] = [Math.min(...us), Math.max(...us), Math.min(...zs), Math.max(...zs)];
  return { wideMm: right - left, highMm: high - low, middleUMm: (left + right) / 2, middleZMm: (low + high) / 2 };
}
