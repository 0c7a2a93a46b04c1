import type { IsoPoint } from "./picture-eye.ts";

/** Convex hull, anticlockwise on paper (Andrew's monotone chain). */
export function convexHull(points: readonly IsoPoint[]): IsoPoint[] {
  const sorted = points.toSorted((a, b) => a.rightMm - b.rightMm || a.downMm - b.downMm);
  const chain = (list: readonly IsoPoint[]) => {
    const hull: IsoPoint[] = [];
    for (const point of list) {
      for (
        let a = hull.at(-2), b = hull.at(-1);
        a !== undefined && b !== undefined && cross(a, b, point) <= 0;
        a = hull.at(-2), b = hull.at(-1)
      )
        hull.pop();
      hull.push(point);
    }
    return hull.slice(0, -1);
  };
  return [...chain(sorted), ...chain(sorted.toReversed())];
}

/** True when every point lies in an anticlockwise convex outline or on its edge. */
export const holdsAll = (hull: readonly IsoPoint[], points: readonly IsoPoint[]): boolean =>
  hull.every((from, index) =>
    points.every((point) => cross(from, hull[(index + 1) % hull.length] ?? from, point) >= 0),
  );

const cross = (o: IsoPoint, a: IsoPoint, b: IsoPoint): number =>
  (a.rightMm - o.rightMm) * (b.downMm - o.downMm) - (a.downMm - o.downMm) * (b.rightMm - o.rightMm);
