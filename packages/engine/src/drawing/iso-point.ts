import type { PointMm } from "@cornerway/schema";
import { isometricEye, onPicture, type IsoPoint } from "./picture-eye.ts";

/** Seen from the south-east and above: east runs right and down, north right and up, lengths along the axes true. */
export const isoPoint = (at: PointMm): IsoPoint => onPicture(isometricEye, at);
