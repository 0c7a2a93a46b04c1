import type { PointMm } from "@cornerway/schema";
import { convexHull } from "./convex-hull.ts";
import { outlineBounds, type OutlineBounds } from "./outline-bounds.ts";
import { dot, onPicture, type PictureEye, type IsoPoint } from "./picture-eye.ts";
import { facesOf, middleOf, type Solid } from "./solid.ts";

/** A solid with what its order is told by. */
type Placed<S> = {
  readonly solid: S;
  readonly planes: readonly Plane[];
  readonly outline: readonly IsoPoint[];
  readonly bounds: OutlineBounds;
  readonly nearness: number;
  /** From its farthest to its nearest along a plane's normal, worked out once. */
  readonly along: (plane: Plane) => Range;
};

/** The plane of a side by its normal, turned towards the eye; sides that face alike share it. */
type Plane = { readonly normal: PointMm };
type Range = { readonly least: number; readonly most: number };

/**
 * Far solids first, so that each drawn over those before it hides what it stands before. One may cover another only if
 * their outlines meet on paper and no plane between them puts it on the far side. Where several cover each other in a
 * ring no order is right; the farthest of them then goes first.
 */
export function drawingOrder<S extends Solid>(solids: readonly S[], eye: PictureEye): S[] {
  const planeOf = planesTowards(eye);
  const placed = solids.map((solid) => placedFor(solid, eye, planeOf));
  const { nearer, waitsFor } = coversOf(placed);
  const left = placed.map((_, at) => at).toSorted((a, b) => nearnessOf(placed, a) - nearnessOf(placed, b));
  const order: S[] = [];
  while (left.length > 0) {
    const free = left.findIndex((at) => waitsFor[at] === 0);
    const [next = 0] = left.splice(Math.max(free, 0), 1);
    for (const at of nearer[next] ?? []) waitsFor[at] = (waitsFor[at] ?? 0) - 1;
    const found = placed[next];
    if (found !== undefined) order.push(found.solid);
  }
  return order;
}

/** What each may be covered by, and how many have to be drawn before each. */
function coversOf<S>(placed: readonly Placed<S>[]): { nearer: number[][]; waitsFor: number[] } {
  const nearer = placed.map((): number[] => []);
  const waitsFor = placed.map(() => 0);
  for (const [a, b] of overlapping(placed.map(({ bounds }) => bounds))) {
    const [one, other] = [placed[a], placed[b]];
    if (one === undefined || other === undefined || !meet(one.outline, other.outline)) continue;
    const [beyond, before] = [liesBeyond(one, other), liesBeyond(other, one)];
    if (beyond === before) continue;
    const [behind, over] = beyond ? [a, b] : [b, a];
    nearer[behind]?.push(over);
    waitsFor[over] = (waitsFor[over] ?? 0) + 1;
  }
  return { nearer, waitsFor };
}

/** Pairs whose rectangles overlap, found by a sweep from left to right over them. */
function* overlapping(bounds: readonly OutlineBounds[]): Generator<readonly [number, number]> {
  const fromLeft = bounds.map((of, at) => ({ at, of })).toSorted((a, b) => a.of.left - b.of.left);
  const open = new Set<{ at: number; of: OutlineBounds }>();
  for (const next of fromLeft) {
    for (const one of open) {
      if (one.of.right <= next.of.left) open.delete(one);
      else if (areNear(one.of, next.of)) yield [one.at, next.at];
    }
    open.add(next);
  }
}

function placedFor<S extends Solid>(solid: S, eye: PictureEye, planeOf: PlaneOf): Placed<S> {
  const { corners } = solid;
  const outline = convexHull(corners.map((at) => onPicture(eye, at)));
  const ranges = new Map<Plane, Range>();
  return {
    solid,
    planes: facesOf(solid).flatMap(({ normal }) => planeOf(normal) ?? []),
    outline,
    bounds: outlineBounds(outline),
    nearness: dot(eye.towards, middleOf(corners)),
    along: (plane) => {
      const known = ranges.get(plane) ?? rangeAlong(corners, plane);
      ranges.set(plane, known);
      return known;
    },
  };
}

type PlaneOf = (normal: PointMm) => Plane | null;

/** A plane seen less steeply than this tells nothing of near and far (cosine). */
const edgeOn = 1e-9;

/** The plane of a normal, the same for the same one and for its opposite; null of one that is seen edge on. */
function planesTowards({ towards }: PictureEye): PlaneOf {
  const known = new Map<string, Plane>();
  return (normal) => {
    const facing = dot(normal, towards);
    if (Math.abs(facing) < edgeOn) return null;
    const sign = facing > 0 ? 1 : -1;
    const turned = { xMm: sign * normal.xMm, yMm: sign * normal.yMm, zMm: sign * normal.zMm };
    const key = `${turned.xMm} ${turned.yMm} ${turned.zMm}`;
    const plane = known.get(key) ?? { normal: turned };
    known.set(key, plane);
    return plane;
  };
}

const nearnessOf = <S>(placed: readonly Placed<S>[], at: number): number => placed[at]?.nearness ?? 0;

/** Solids that touch may run into each other by this much, mm, a thin one by half its thickness. */
const touchMm = 30;

/** True when a plane of either solid parts them with `a` on the side away from the eye. */
const liesBeyond = <S>(a: Placed<S>, b: Placed<S>): boolean =>
  a.planes.some((plane) => isParting(plane, a, b)) || b.planes.some((plane) => isParting(plane, a, b));

function isParting<S>(plane: Plane, a: Placed<S>, b: Placed<S>): boolean {
  const [far, near] = [a.along(plane), b.along(plane)];
  const into = Math.min(touchMm, (far.most - far.least) / 2, (near.most - near.least) / 2);
  return far.most <= near.least + into;
}

function rangeAlong(corners: readonly PointMm[], { normal }: Plane): Range {
  const along = corners.map((at) => dot(normal, at));
  return { least: Math.min(...along), most: Math.max(...along) };
}

/** Where the rectangles round two outlines lie apart the outlines do as well. */
const areNear = (a: OutlineBounds, b: OutlineBounds): boolean =>
  a.left < b.right && b.left < a.right && a.top < b.foot && b.top < a.foot;

/** Outlines that only touch on paper cover nothing of each other, mm. */
const apartMm = 0.5;

/** True when two convex outlines share some area: no edge of either parts them. */
const meet = (a: readonly IsoPoint[], b: readonly IsoPoint[]): boolean => !isParted(a, b) && !isParted(b, a);

const isParted = (by: readonly IsoPoint[], other: readonly IsoPoint[]): boolean =>
  by.some((from, index) => {
    const to = by[(index + 1) % by.length] ?? from;
    const [right, down] = [to.rightMm - from.rightMm, to.downMm - from.downMm];
    const long = Math.sqrt(right * right + down * down);
    return other.every(
      (at) => (at.rightMm - from.rightMm) * down - (at.downMm - from.downMm) * right >= -apartMm * long,
    );
  });
