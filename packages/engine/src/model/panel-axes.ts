import { dot, lengthOf, minus, plus, times, type Vector } from "../numerics/vector.ts";
import { RECTANGLE_TOLERANCE } from "../numerics/tolerances.ts";

/** Edges of a rectangle: e1 from bottom left to bottom right, e2 from bottom left to top left, unit vectors. */
export interface PanelAxes {
  readonly e1: Vector;
  readonly e2: Vector;
  readonly widthMm: number;
  readonly heightMm: number;
}

/** Axes of the rectangle through four corners (bottom left, bottom right, top right, top left); null when it is none. */
export function panelAxes(corners: readonly [Vector, Vector, Vector, Vector]): PanelAxes | null {
  const [bl, br, tr, tl] = corners;
  const bottom = minus(br, bl);
  const left = minus(tl, bl);
  const widthMm = lengthOf(bottom);
  const heightMm = lengthOf(left);
  if (widthMm === 0 || heightMm === 0) return null;
  const allowed = RECTANGLE_TOLERANCE * lengthOf(minus(tr, bl));
  const e1 = times(bottom, 1 / widthMm);
  const e2 = times(left, 1 / heightMm);
  if (lengthOf(minus(tr, plus(br, left))) > allowed || Math.abs(dot(e1, left)) > allowed) return null;
  return { e1, e2, widthMm, heightMm };
}
