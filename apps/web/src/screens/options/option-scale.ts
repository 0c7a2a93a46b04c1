import type { Scheme } from "@cornerway/schema";
import { extentOf } from "../../paper/lay-views.ts";
import type { Side } from "../../drawing/contract.ts";

export const widthPx = 380;
export const heightPx = 190;
const groundPx = 166;
const marginPx = 14;

/** One scale at which the tallest and the longest of these drawings fit, so that sizes are compared by eye. */
export function scaleOf(schemes: readonly Scheme[], side: Side): number {
  const extents = schemes.filter(({ containers }) => containers.length > 0).map((scheme) => extentOf(scheme, side));
  const longestM = Math.max(1, ...extents.map(({ uLow, uHigh }) => (uHigh - uLow) / 1000));
  const tallestM = Math.max(1, ...extents.map(({ vHigh }) => vHigh / 1000));
  return Math.min((widthPx - 2 * marginPx) / longestM, (groundPx - marginPx) / tallestM);
}

/** Where the origin of a drawing comes to lie so that it stands in the middle of its picture, on the ground. */
export function middleOf(scheme: Scheme, side: Side, pxPerM: number) {
  const { uLow, uHigh } = extentOf(scheme, side);
  return { originXPx: widthPx / 2 - ((uLow + uHigh) / 2000) * pxPerM, originYPx: groundPx, pxPerM };
}
