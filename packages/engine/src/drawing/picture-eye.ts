import type { PointMm } from "@cornerway/schema";
import { cosDegThousandths, sinDegThousandths } from "../numerics/elementary.ts";

/** A point on the paper of a picture, mm: right and down. */
export type IsoPoint = { rightMm: number; downMm: number };

/** How a picture looks at the site: where its paper's right and down point, and the way towards the eye. No length. */
export type PictureEye = { readonly right: PointMm; readonly down: PointMm; readonly towards: PointMm };

/** Where the eye stands, thousandths of a degree: anticlockwise from east, and above level. */
export type EyePlace = { readonly turnMdeg: number; readonly tiltMdeg: number };

const cos30 = Math.sqrt(3) / 2;

/** From the south-east and above: east runs right and down, north right and up, lengths along the axes true. */
export const isometricEye: PictureEye = {
  right: { xMm: cos30, yMm: cos30, zMm: 0 },
  down: { xMm: 0.5, yMm: -0.5, zMm: -1 },
  towards: { xMm: 1, yMm: -1, zMm: 1 },
};

/** Where the isometric's eye stands: south-east, its tangent above level 1/√2. */
export const isometricPlace: EyePlace = { turnMdeg: -45_000, tiltMdeg: 35_264 };

/** Lengths square to the eye are drawn this much longer than true, so that the isometric's axes are drawn true. */
const enlarged = Math.sqrt(1.5);

/** A picture from anywhere above level, without vanishing point. */
export function pictureEye({ turnMdeg, tiltMdeg }: EyePlace): PictureEye {
  if (turnMdeg === isometricPlace.turnMdeg && tiltMdeg === isometricPlace.tiltMdeg) return isometricEye;
  const [cos, sin] = [cosDegThousandths(turnMdeg), sinDegThousandths(turnMdeg)];
  const [level, up] = [cosDegThousandths(tiltMdeg), sinDegThousandths(tiltMdeg)];
  return {
    right: { xMm: -sin * enlarged, yMm: cos * enlarged, zMm: 0 },
    down: { xMm: up * cos * enlarged, yMm: up * sin * enlarged, zMm: -level * enlarged },
    towards: { xMm: level * cos, yMm: level * sin, zMm: up },
  };
}

export const dot = (a: PointMm, b: PointMm): number => a.xMm * b.xMm + a.yMm * b.yMm + a.zMm * b.zMm;

/** A point of the site on the picture's paper, mm. */
export const onPicture = (eye: PictureEye, at: PointMm): IsoPoint => ({
  rightMm: dot(eye.right, at),
  downMm: dot(eye.down, at),
});
