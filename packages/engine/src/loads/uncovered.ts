/** A rectangle in any plane, mm. */
export type Rect = { readonly u0: number; readonly u1: number; readonly v0: number; readonly v1: number };

/**
 * What is left of a rectangle outside others, as rectangles: rows along v merged along u. Deterministic; slivers under
 * a tenth of a millimetre are dropped.
 */
export function uncovered(whole: Rect, covers: readonly Rect[]): Rect[] {
  const vs = edges(
    whole.v0,
    whole.v1,
    covers.flatMap(({ v0, v1 }) => [v0, v1]),
  );
  return spans(vs).flatMap(([v0, v1]) => {
    const across = covers.filter((cover) => cover.v0 < (v0 + v1) / 2 && cover.v1 > (v0 + v1) / 2);
    return gaps(whole.u0, whole.u1, across).map(([u0, u1]) => ({ u0, u1, v0, v1 }));
  });
}

/** A rectangle cut along lines of u and of v. */
export function cutAlong(rect: Rect, us: readonly number[], vs: readonly number[]): Rect[] {
  const rows = spans(edges(rect.v0, rect.v1, vs));
  return spans(edges(rect.u0, rect.u1, us)).flatMap(([u0, u1]) => rows.map(([v0, v1]) => ({ u0, u1, v0, v1 })));
}

export const areaOf = ({ u0, u1, v0, v1 }: Rect): number => (u1 - u0) * (v1 - v0);

const sliverMm = 0.1;

const edges = (from: number, to: number, between: readonly number[]): number[] => {
  const inside = between.filter((at) => at > from + sliverMm && at < to - sliverMm).toSorted((a, b) => a - b);
  const apart = inside.filter((at, place) => place === 0 || at - (inside[place - 1] ?? at) > sliverMm);
  return [from, ...apart, to];
};

const spans = (places: readonly number[]): [number, number][] =>
  places.slice(1).map((to, at) => [places[at] ?? to, to]);

function gaps(from: number, to: number, covers: readonly Rect[]): [number, number][] {
  const left: [number, number][] = [];
  let at = from;
  for (const { u0, u1 } of covers.toSorted((a, b) => a.u0 - b.u0)) {
    if (u0 > at + sliverMm) left.push([at, Math.min(u0, to)]);
    at = Math.max(at, u1);
    if (at >= to) break;
  }
  if (to > at + sliverMm) left.push([at, to]);
  return left.filter(([start, end]) => end - start > sliverMm);
}
