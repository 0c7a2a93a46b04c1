import { placeContainer, storeysOf } from "@cornerway/engine";
import type { PointMm, Scheme } from "@cornerway/schema";
import { project, type Projection } from "../drawing/view-transform.ts";

interface Place {
  at: PointMm;
  projection: Projection;
  reachMm: number;
}

/**
 * Where an end of a beam comes to lie: on a post's head or under a corner of a unit within reach of what the view shows;
 * else where it was put, at the height of its other end.
 */
export function beamEnd(scheme: Scheme, { at, projection, reachMm }: Place, from: PointMm | null): PointMm {
  const heads = scheme.posts.map((post) => ({ xMm: post.xUm / 1000, yMm: post.yUm / 1000, zMm: post.topZUm / 1000 }));
  const corners = scheme.containers
    .map(placeContainer)
    .flatMap(({ bottomFittings }) => bottomFittings.map((fitting) => fitting.at));
  const offPaper = (target: PointMm) => {
    const [a, b] = [project(projection, target), project(projection, at)];
    return Math.hypot(a.uMm - b.uMm, a.vMm - b.vMm);
  };
  const near = [...heads, ...corners]
    .filter(
      (target) => offPaper(target) <= reachMm && (from === null || projection !== "plan" || sameHeight(target, from)),
    )
    .toSorted((a, b) => offPaper(a) - offPaper(b) || project(projection, a).depthMm - project(projection, b).depthMm);
  return near[0] ?? { ...at, zMm: Math.round((from ?? { zMm: freeHeightMm(scheme, at, projection) }).zMm) };
}

/** On the plan of the ground storey a beam carries the storey above, where there is one. */
function freeHeightMm(scheme: Scheme, at: PointMm, projection: Projection): number {
  const onGround = projection === "plan" && Math.abs(at.zMm - scheme.site.groundZUm / 1000) < 1;
  return (onGround ? storeysOf(scheme)[1]?.levelMm : undefined) ?? at.zMm;
}

const sameHeight = (a: PointMm, b: PointMm) => Math.abs(a.zMm - b.zMm) < 1;
