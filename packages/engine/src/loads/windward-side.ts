import type { WindDirection } from "./wind-shape.ts";

/** The side a wind blows against: its outward normal points into the wind. */
export const windwardSideOf: Readonly<Record<WindDirection, WindDirection>> = {
  "+x": "-x",
  "-x": "+x",
  "+y": "-y",
  "-y": "+y",
};
