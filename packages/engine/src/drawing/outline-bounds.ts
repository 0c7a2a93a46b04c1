import type { IsoPoint } from "./picture-eye.ts";

/** The upright rectangle round an outline on paper, mm; all zero where there is no point. */
export type OutlineBounds = {
  readonly left: number;
  readonly right: number;
  readonly top: number;
  readonly foot: number;
};

export function outlineBounds(points: readonly IsoPoint[]): OutlineBounds {
  if (points.length === 0) return { left: 0, right: 0, top: 0, foot: 0 };
  const rights = points.map(({ rightMm }) => rightMm);
  const downs = points.map(({ downMm }) => downMm);
  return { left: Math.min(...rights), right: Math.max(...rights), top: Math.min(...downs), foot: Math.max(...downs) };
}
