import type { Face, PointMm } from "@cornerway/schema";
import { toSite, type PlacedContainer, type PlanFrame } from "./place.ts";

/** A face in the site frame: the point u = v = 0 in mm, unit directions of u and v, and the outward normal. */
export type FaceFrame = {
  readonly origin: PointMm;
  readonly u: PointMm;
  readonly v: PointMm;
  readonly normal: PointMm;
};

/** The frame in which openings of this face are measured (`offset` along u, `sill` along v). */
export function faceFrame({ dimensions, frame }: PlacedContainer, face: Face): FaceFrame {
  const x = dimensions.lengthMm / 2;
  const y = dimensions.widthMm / 2;
  const top = dimensions.heightMm;
  const at = (xMm: number, yMm: number, zMm: number) => toSite(frame, { xMm, yMm, zMm });
  const along = (xMm: number, yMm: number) => direction(frame, xMm, yMm);
  switch (face) {
    case "left":
      return { origin: at(-x, y, 0), u: along(1, 0), v: up, normal: along(0, 1) };
    case "right":
      return { origin: at(-x, -y, 0), u: along(1, 0), v: up, normal: along(0, -1) };
    case "front":
      return { origin: at(-x, -y, 0), u: along(0, 1), v: up, normal: along(-1, 0) };
    case "door":
      return { origin: at(x, -y, 0), u: along(0, 1), v: up, normal: along(1, 0) };
    case "roof":
      return { origin: at(-x, -y, top), u: along(1, 0), v: along(0, 1), normal: up };
    case "floor":
      return { origin: at(-x, -y, 0), u: along(1, 0), v: along(0, 1), normal: down };
  }
}

/** The site point at (u, v) mm on a face. */
export const pointOnFace = ({ origin, u, v }: FaceFrame, uMm: number, vMm: number): PointMm => ({
  xMm: origin.xMm + u.xMm * uMm + v.xMm * vMm,
  yMm: origin.yMm + u.yMm * uMm + v.yMm * vMm,
  zMm: origin.zMm + u.zMm * uMm + v.zMm * vMm,
});

const up: PointMm = { xMm: 0, yMm: 0, zMm: 1 };
const down: PointMm = { xMm: 0, yMm: 0, zMm: -1 };

const direction = (frame: PlanFrame, xMm: number, yMm: number): PointMm => ({
  xMm: xMm * frame.cos - yMm * frame.sin,
  yMm: xMm * frame.sin + yMm * frame.cos,
  zMm: 0,
});
