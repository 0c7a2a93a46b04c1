import type { PointMm } from "@cornerway/schema";

/** A point on the paper of the isometric, mm: right and down. */
export type IsoPoint = { rightMm: number; downMm: number };

const cos30 = Math.sqrt(3) / 2;

/** Seen from the south-east and above: east runs right and down, north right and up, lengths along the axes true. */
export const isoPoint = ({ xMm, yMm, zMm }: PointMm): IsoPoint => ({
  rightMm: (xMm + yMm) * cos30,
  downMm: (xMm - yMm) / 2 - zMm,
});
