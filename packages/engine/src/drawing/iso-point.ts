import type { PointMm } from "@cornerway/schema";
import { isometricEye, onPicture } from "./picture-eye.ts";

/** A point on the paper of the isometric, mm: right and down. */
export type IsoPoint = { rightMm: number; downMm: number };

/** Seen from the south-east and above: east runs right and down, north right and up, lengths along the axes true. */
export const isoPoint = (at: PointMm): IsoPoint => onPicture(isometricEye, at);
