import type { PointMm } from "@cornerway/schema";
import { solidCorners, type PlacedContainer } from "../geometry/place.ts";
import { convexHull } from "./convex-hull.ts";
import { onPicture, type PictureEye, type IsoPoint } from "./picture-eye.ts";

/** Sun about 45° high in the south-west: what stands 1 m high throws its shadow this far east and north, m. */
const shadowPerHeight = { east: 0.62, north: 0.32 } as const;

/** A unit with its corners, worked out once for all it may throw its shadow on. */
export type Standing = { readonly unit: PlacedContainer; readonly corners: readonly PointMm[] };

export const standing = (unit: PlacedContainer): Standing => ({ unit, corners: solidCorners(unit) });

/** The shadow of a unit on the ground. */
export const groundShadow = ({ corners }: Standing, groundMm: number, eye: PictureEye): IsoPoint[] =>
  convexHull(fallenOn(corners, groundMm).map(({ xMm, yMm }) => onPicture(eye, { xMm, yMm, zMm: groundMm })));

/** Shadows on a unit's roof of those that stand higher, each cut off at the roof's edge. */
export function roofShadows({ unit, corners }: Standing, all: readonly Standing[], eye: PictureEye): IsoPoint[][] {
  const roof = corners.slice(4);
  return all
    .filter((other) => other.unit.baseZMm > unit.topZMm - touchMm)
    .map((other) => fallenOn(other.corners, unit.topZMm))
    .filter((fallen) => areNear(fallen, roof))
    .map((fallen) => clipped(hullInPlan(fallen), roof))
    .filter((shadow) => shadow.length > 2)
    .map((shadow) => shadow.map(({ xMm, yMm }) => onPicture(eye, { xMm, yMm, zMm: unit.topZMm })));
}

type PlanPoint = Pick<PointMm, "xMm" | "yMm">;

/** A unit stands on a roof when it starts this near to it, mm. */
const touchMm = 40;

/** Where the corners of a unit throw their shadows on a level below them. */
const fallenOn = (corners: readonly PointMm[], levelMm: number): PlanPoint[] =>
  corners.map(({ xMm, yMm, zMm }) => {
    const heightMm = Math.max(0, zMm - levelMm);
    return { xMm: xMm + heightMm * shadowPerHeight.east, yMm: yMm + heightMm * shadowPerHeight.north };
  });

/** False where one of two outlines lies wholly aside of the other along east or north. */
const areNear = (a: readonly PlanPoint[], b: readonly PlanPoint[]): boolean =>
  !isAside(a, b, ({ xMm }) => xMm) && !isAside(a, b, ({ yMm }) => yMm);

function isAside(a: readonly PlanPoint[], b: readonly PlanPoint[], along: (at: PlanPoint) => number): boolean {
  const [one, other] = [a.map(along), b.map(along)];
  return Math.max(...one) < Math.min(...other) || Math.max(...other) < Math.min(...one);
}

/** Convex hull in plan, anticlockwise. */
const hullInPlan = (points: readonly PlanPoint[]): PlanPoint[] =>
  convexHull(points.map(({ xMm, yMm }) => ({ rightMm: xMm, downMm: yMm }))).map(({ rightMm, downMm }) => ({
    xMm: rightMm,
    yMm: downMm,
  }));

/** The part of a polygon inside an anticlockwise convex one (Sutherland and Hodgman, 1974). */
function clipped(polygon: readonly PlanPoint[], by: readonly PlanPoint[]): PlanPoint[] {
  return by.reduce<PlanPoint[]>(
    (kept, from, index) => cutBy(kept, from, by[(index + 1) % by.length] ?? from),
    [...polygon],
  );
}

function cutBy(polygon: readonly PlanPoint[], from: PlanPoint, to: PlanPoint): PlanPoint[] {
  const side = ({ xMm, yMm }: PlanPoint) =>
    (to.xMm - from.xMm) * (yMm - from.yMm) - (to.yMm - from.yMm) * (xMm - from.xMm);
  return polygon.flatMap((point, index) => {
    const before = polygon.at(index - 1) ?? point;
    const [here, there] = [side(point), side(before)];
    const crossing = here * there < 0 ? [between(before, point, there / (there - here))] : [];
    return here >= 0 ? [...crossing, point] : crossing;
  });
}

const between = (a: PlanPoint, b: PlanPoint, share: number): PlanPoint => ({
  xMm: a.xMm + (b.xMm - a.xMm) * share,
  yMm: a.yMm + (b.yMm - a.yMm) * share,
});
