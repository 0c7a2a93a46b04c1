import type { PointMm } from "@cornerway/schema";
import { hypot } from "../numerics/elementary.ts";
import { dot } from "./picture-eye.ts";

/** A convex solid of eight corners, mm: four of its base in turn, then the four of its top over them. */
export type Solid = { readonly id: string; readonly corners: readonly PointMm[] };

/** One side of a solid: its outline and the unit direction it faces. */
export type SolidFace = { readonly outline: readonly PointMm[]; readonly normal: PointMm };

/** The four sides and the top; the underside is never seen from above. */
export function facesOf({ corners }: Solid): SolidFace[] {
  const middle = middleOf(corners);
  const at = (index: number) => corners[index] ?? middle;
  const outlines = [
    ...[0, 1, 2, 3].map((from) => {
      const to = (from + 1) % 4;
      return [at(from), at(to), at(to + 4), at(from + 4)];
    }),
    [at(4), at(5), at(6), at(7)],
  ];
  return outlines.flatMap((outline) => {
    const normal = outwards(outline, middle);
    return normal === null ? [] : [{ outline, normal }];
  });
}

export const middleOf = (points: readonly PointMm[]): PointMm => ({
  xMm: points.reduce((sum, { xMm }) => sum + xMm, 0) / points.length,
  yMm: points.reduce((sum, { yMm }) => sum + yMm, 0) / points.length,
  zMm: points.reduce((sum, { zMm }) => sum + zMm, 0) / points.length,
});

const less = (a: PointMm, b: PointMm): PointMm => ({
  xMm: a.xMm - b.xMm,
  yMm: a.yMm - b.yMm,
  zMm: a.zMm - b.zMm,
});

/** The unit normal of a flat outline, away from the middle of its solid; null for one without area. */
function outwards([a, b, , d]: readonly PointMm[], middle: PointMm): PointMm | null {
  if (a === undefined || b === undefined || d === undefined) return null;
  const [p, q] = [less(b, a), less(d, a)];
  const cross = {
    xMm: p.yMm * q.zMm - p.zMm * q.yMm,
    yMm: p.zMm * q.xMm - p.xMm * q.zMm,
    zMm: p.xMm * q.yMm - p.yMm * q.xMm,
  };
  const long = hypot(hypot(cross.xMm, cross.yMm), cross.zMm);
  if (long === 0) return null;
  // A plate without thickness lies in its own top, which then faces up.
  const away = dot(cross, less(a, middle));
  const sign = (away === 0 ? cross.zMm : away) < 0 ? -1 : 1;
  return { xMm: (sign * cross.xMm) / long, yMm: (sign * cross.yMm) / long, zMm: (sign * cross.zMm) / long };
}
