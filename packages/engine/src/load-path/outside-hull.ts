type Place = { readonly xMm: number; readonly yMm: number };

/**
 * How a point lies to what bears: how far outside, mm (0 inside), how far to the nearest edge from within, mm
 * (0 outside), the nearest place on them and on their outline, and whether they span an area.
 */
export type HullPlace = {
  readonly outsideMm: number;
  readonly insideMm: number;
  readonly nearest: Place;
  readonly edge: Place;
  readonly spansArea: boolean;
};

/** Where a resultant comes down against the convex hull of the bearings. `bearings` must not be empty. */
export function outsideHull(bearings: readonly Place[], at: Place): HullPlace {
  const hull = convexHull(bearings);
  const edges = hull.map((from, index) => ({ from, to: hull[(index + 1) % hull.length] ?? from }));
  const spansArea = hull.length > 2;
  const places = edges.map(({ from, to }) => nearestOn(from, to, at));
  const distances = places.map((place) => distanceMm(place, at));
  const leastMm = Math.min(...distances);
  const edge = places[distances.indexOf(leastMm)] ?? at;
  if (spansArea && edges.every(({ from, to }) => turn(from, to, at) >= 0))
    return { outsideMm: 0, insideMm: leastMm, nearest: at, edge, spansArea };
  return { outsideMm: leastMm, insideMm: 0, nearest: edge, edge, spansArea };
}

/** Three bearings closer to one line than this span no area, mm² of twice the triangle. */
const flatMm2 = 1e4;

/** Andrew's monotone chain, anticlockwise; collinear places are dropped. */
function convexHull(places: readonly Place[]): Place[] {
  const sorted = places.toSorted((a, b) => a.xMm - b.xMm || a.yMm - b.yMm);
  if (sorted.length < 3) return sorted;
  const lower = chain(sorted);
  const upper = chain(sorted.toReversed());
  const hull = [...lower.slice(0, -1), ...upper.slice(0, -1)];
  return hull.length > 2 ? hull : sorted.filter((_, at) => at === 0 || at === sorted.length - 1);
}

function chain(sorted: readonly Place[]): Place[] {
  const kept: Place[] = [];
  for (const place of sorted) {
    for (;;) {
      const last = kept.at(-1);
      const before = kept.at(-2);
      if (last === undefined || before === undefined || turn(before, last, place) > flatMm2) break;
      kept.pop();
    }
    kept.push(place);
  }
  return kept;
}

const turn = (from: Place, to: Place, at: Place): number =>
  (to.xMm - from.xMm) * (at.yMm - from.yMm) - (to.yMm - from.yMm) * (at.xMm - from.xMm);

function nearestOn(from: Place, to: Place, at: Place): Place {
  const dx = to.xMm - from.xMm;
  const dy = to.yMm - from.yMm;
  const square = dx * dx + dy * dy;
  const along = square === 0 ? 0 : ((at.xMm - from.xMm) * dx + (at.yMm - from.yMm) * dy) / square;
  const share = Math.max(0, Math.min(1, along));
  return { xMm: from.xMm + share * dx, yMm: from.yMm + share * dy };
}

function distanceMm(one: Place, other: Place): number {
  const x = one.xMm - other.xMm;
  const y = one.yMm - other.yMm;
  return Math.sqrt(x * x + y * y);
}
