import { faceFrame, placeContainer } from "@cornerway/engine";
import type { Container, Face, PointMm } from "@cornerway/schema";
import type { FacePointMm } from "./cut-opening.ts";

/** A site point as seen on a face of a unit: its foot on the face, mm. */
export function facePoint(unit: Container, face: Face, at: PointMm): FacePointMm {
  const { origin, u, v } = faceFrame(placeContainer(unit), face);
  const along = (axis: PointMm) =>
    (at.xMm - origin.xMm) * axis.xMm + (at.yMm - origin.yMm) * axis.yMm + (at.zMm - origin.zMm) * axis.zMm;
  return { uMm: along(u), vMm: along(v) };
}
