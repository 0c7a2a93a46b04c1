import type { Beam, PointMm, Scheme } from "@cornerway/schema";
import { mmToUm } from "@cornerway/schema";
import { newElementId } from "./new-element-id.ts";
import { nextTag } from "./next-tag.ts";

/** A usual beam to begin from; the engineer chooses the section. Common practice, no published source. */
export const usualBeamSection = "W8x31";
/** Shorter than this it is not yet a beam, mm. */
const leastMm = 200;

/** A beam between two points of its upper face; null while they are too near each other in plan. */
export function newBeam(scheme: Scheme, from: PointMm, to: PointMm): Beam | null {
  if (Math.hypot(to.xMm - from.xMm, to.yMm - from.yMm) < leastMm) return null;
  return {
    id: newElementId("m"),
    tag: nextTag(scheme, "BM"),
    from: spotUm(from),
    to: spotUm(to),
    section: usualBeamSection,
  };
}

const spotUm = ({ xMm, yMm, zMm }: PointMm) => ({ xUm: mmToUm(xMm), yUm: mmToUm(yMm), zUm: mmToUm(zMm) });

/** Draws a place to the nearest post head or middle of a top or bottom fitting within reach as `apart` measures it. */
export function snapBeamEnd(
  scheme: Scheme,
  at: PointMm,
  reachMm: number,
  targets: readonly PointMm[],
  apart: (a: PointMm, b: PointMm) => number,
): PointMm {
  const heads = scheme.posts.map((post) => ({ xMm: post.xUm / 1000, yMm: post.yUm / 1000, zMm: post.topZUm / 1000 }));
  return [...heads, ...targets].reduce<{ at: PointMm; off: number }>(
    (best, target) => {
      const off = apart(target, at);
      return off <= reachMm && off < best.off ? { at: target, off } : best;
    },
    { at, off: Infinity },
  ).at;
}
