import type { PointMm } from "@cornerway/schema";
import { convexHull } from "../../src/drawing/convex-hull.ts";
import { outlineBounds, type OutlineBounds } from "../../src/drawing/outline-bounds.ts";
import { dot, onPicture, type PictureEye, type IsoPoint } from "../../src/drawing/picture-eye.ts";
import { facesOf, middleOf, type Solid } from "../../src/drawing/solid.ts";

/** A solid with what its order is told by. */
type Placed<S> = {
  readonly solid: S;
  readonly corners: readonly PointMm[];
  readonly normals: readonly PointMm[];
  readonly outline: readonly IsoPoint[];
  readonly bounds: OutlineBounds;
  readonly nearness: number;
};

/**
 * The order of `drawing-order.ts` told plainly, each solid held against each other one and nothing worked out ahead: far solids first, so that each drawn over those before it hides what it stands before. One may cover another only if
 * their outlines meet on paper and no plane between them puts it on the far side. Where several cover each other in a
 * ring no order is right; the farthest of them then goes first.
 */
export function plainOrder<S extends Solid>(solids: readonly S[], eye: PictureEye): S[] {
  const placed = solids.map((solid) => placedFor(solid, eye));
  /** What each may be covered by, and how many of those that go before each are still to be drawn. */
  const nearer = placed.map((one) => [...placed.keys()].filter((at) => isBehind(one, placed[at] ?? one, eye)));
  const waitsFor = placed.map(() => 0);
  const count = (by: 1 | -1) => (at: number) => (waitsFor[at] = (waitsFor[at] ?? 0) + by);
  for (const each of nearer) each.forEach(count(1));
  const left = new Set(placed.keys());
  const order: S[] = [];
  while (left.size > 0) {
    const free = [...left].filter((at) => waitsFor[at] === 0);
    const next = farthest(free.length > 0 ? free : [...left], placed);
    left.delete(next);
    nearer[next]?.forEach(count(-1));
    const found = placed[next];
    if (found !== undefined) order.push(found.solid);
  }
  return order;
}

function placedFor<S extends Solid>(solid: S, eye: PictureEye): Placed<S> {
  const { corners } = solid;
  const outline = convexHull(corners.map((at) => onPicture(eye, at)));
  return {
    solid,
    corners,
    normals: facesOf(solid).map(({ normal }) => normal),
    outline,
    bounds: outlineBounds(outline),
    nearness: dot(eye.towards, middleOf(corners)),
  };
}

const farthest = <S>(among: readonly number[], placed: readonly Placed<S>[]): number =>
  among.reduce((best, at) => ((placed[at]?.nearness ?? 0) < (placed[best]?.nearness ?? 0) ? at : best), among[0] ?? 0);

/** True when `a` has to be drawn before `b`: `b` may cover it, and it may not cover `b`. */
const isBehind = <S>(a: Placed<S>, b: Placed<S>, eye: PictureEye): boolean =>
  a !== b &&
  areNear(a.bounds, b.bounds) &&
  meet(a.outline, b.outline) &&
  liesBeyond(a, b, eye) &&
  !liesBeyond(b, a, eye);

/** Solids that touch may run into each other by this much, mm, a thin one by half its thickness. */
const touchMm = 30;
/** A plane seen less steeply than this tells nothing of near and far (cosine). */
const edgeOn = 1e-9;

/** True when a plane of either solid parts them with `a` on the side away from the eye. */
const liesBeyond = <S>(a: Placed<S>, b: Placed<S>, eye: PictureEye): boolean =>
  [...a.normals, ...b.normals].some((normal) => {
    const facing = dot(normal, eye.towards);
    if (Math.abs(facing) < edgeOn) return false;
    const sign = facing > 0 ? 1 : -1;
    const [near, far] = [rangeAlong(a.corners, normal, sign), rangeAlong(b.corners, normal, sign)];
    const into = Math.min(touchMm, (near.most - near.least) / 2, (far.most - far.least) / 2);
    return near.most <= far.least + into;
  });

function rangeAlong(corners: readonly PointMm[], normal: PointMm, sign: number): { least: number; most: number } {
  const along = corners.map((at) => sign * dot(normal, at));
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
