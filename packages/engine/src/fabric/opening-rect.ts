import type { Opening } from "@cornerway/schema";
import type { FaceRect } from "../catalog/container-dimensions.ts";

/** An opening as a rectangle on its face, mm. */
export const openingRect = ({ offsetUm, sillUm, widthUm, heightUm }: Opening): FaceRect => ({
  u0: offsetUm / 1000,
  u1: (offsetUm + widthUm) / 1000,
  v0: sillUm / 1000,
  v1: (sillUm + heightUm) / 1000,
});

/** Whether two rectangles of one face share more than a touch, mm. */
export const rectsLap = (a: FaceRect, b: FaceRect, touchMm: number): boolean =>
  Math.min(a.u1, b.u1) - Math.max(a.u0, b.u0) > touchMm && Math.min(a.v1, b.v1) - Math.max(a.v0, b.v0) > touchMm;
