import type { Scheme } from "@cornerway/schema";
import { placeContainer, solidCorners } from "../geometry/place.ts";
import type { IsometricModel } from "./isometric-model.ts";
import { outlineBounds } from "./outline-bounds.ts";
import { isometricEye, onPicture, type PictureEye, type IsoPoint } from "./picture-eye.ts";

/** Size of the picture on paper, mm; 0 while nothing is drawn. */
export const isometricSize = ({ units }: Pick<IsometricModel, "units">): PictureSize =>
  sizeOf(units.flatMap(({ silhouette }) => silhouette));

/** The same of a scheme, without drawing it. */
export const pictureSize = (scheme: Scheme, eye: PictureEye = isometricEye): PictureSize =>
  sizeOf(scheme.containers.flatMap((unit) => solidCorners(placeContainer(unit))).map((at) => onPicture(eye, at)));

export type PictureSize = { readonly widthMm: number; readonly heightMm: number };

function sizeOf(points: readonly IsoPoint[]): PictureSize {
  const { left, right, top, foot } = outlineBounds(points);
  return { widthMm: right - left, heightMm: foot - top };
}
