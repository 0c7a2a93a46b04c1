import type { Operation, Pad, Post, Scheme } from "@cornerway/schema";
import { postSizeMm } from "../catalog/post-size.ts";
import type { Rail } from "../fabric/fabric-of.ts";
import { unitsNear, type Building, type Unit } from "../geometry/building.ts";
import { toSite } from "../geometry/place.ts";
import { planRect, holdsPoint, overlapDepthMm } from "../geometry/plan-rect.ts";
import { mostPackingMm, touchMm } from "../geometry/tolerances.ts";
import type { PadSize } from "../strength/element-result.ts";
import type { FreshNames } from "./fresh-names.ts";

/** A place under the top rail of a unit's side, `uMm` along it. */
export type WallPlace = { readonly unitId: string; readonly rail: Rail; readonly uMm: number };

/** A place a post is to hold from below, in the site frame, mm. */
export type Held = { readonly xMm: number; readonly yMm: number; readonly headZMm: number };

export type PostsSet = {
  readonly operations: readonly Operation[];
  readonly postIds: readonly string[];
  readonly pads: number;
};

/**
 * A post from the ground to each place, on a pad of its own unless one lies there. Undefined where a unit stands in the way:
 * such a post would need a hole through it.
 */
export function postsFromGround(
  { site, pads }: Scheme,
  building: Building,
  names: FreshNames,
  held: readonly Held[],
  section: string,
  size: PadSize,
): PostsSet | undefined {
  const half = postSizeMm(section) / 2;
  const operations: Operation[] = [];
  const postIds: string[] = [];
  let set = 0;
  for (const { xMm, yMm, headZMm } of held) {
    const shaft = planRect({ xMm, yMm, zMm: 0, cos: 1, sin: 0, turnMdeg: 0 }, -half, half, -half, half);
    const inTheWay = unitsNear(building, shaft).some(
      (unit) => unit.baseZMm < headZMm - mostPackingMm && overlapDepthMm(unit.outline, shaft) > 0,
    );
    if (inTheWay || headZMm <= building.groundZMm) return undefined;
    const post = postOf(names, xMm, yMm, site.groundZUm, Math.round(headZMm * 1000), section);
    const lies = pads.some((pad) => pad.topZUm === site.groundZUm && holds(building, pad, xMm, yMm));
    if (!lies) operations.push({ kind: "pad.set", pad: padOf(names, xMm, yMm, site.groundZUm, size) });
    operations.push({ kind: "post.set", post });
    postIds.push(post.id);
    if (!lies) set += 1;
  }
  return { operations, postIds, pads: set };
}

/**
 * A post in the side wall of a unit under its top rail at `uMm` along it, and one below the other in the walls of the units
 * below, down to a pad. Undefined where the way down meets no rail or pad.
 */
export function postsInWall(
  { pads }: Scheme,
  building: Building,
  names: FreshNames,
  places: readonly WallPlace[],
  section: string,
  size: PadSize,
): PostsSet | undefined {
  const operations: Operation[] = [];
  const postIds: string[] = [];
  let set = 0;
  for (const { unitId, rail, uMm } of places) {
    const top = building.unitById.get(unitId);
    if (top === undefined || (rail !== "left" && rail !== "right")) return undefined;
    const at = inWall(top, rail, uMm, postSizeMm(section) / 2);
    for (let unit: Unit | undefined = top; unit !== undefined; unit = unitUnder(building, unit, at)) {
      const { v0, v1 } = unit.dimensions.sheetZone(rail);
      const [foot, head] = [unit.baseZMm + v0, unit.baseZMm + v1].map((zMm) => Math.round(zMm * 1000));
      const post = postOf(names, at.xMm, at.yMm, foot ?? 0, head ?? 0, section, unit.frame.turnMdeg);
      operations.push({ kind: "post.set", post });
      postIds.push(post.id);
      const onGround = Math.abs(unit.baseZMm - building.groundZMm) <= mostPackingMm;
      if (!onGround) continue;
      // the bottom rail lies higher than the fittings: the pad comes up to it
      const topZUm = Math.round((unit.baseZMm + unit.dimensions.baseAboveFittingMm) * 1000);
      const lies = pads.some((pad) => pad.topZUm === topZUm && holds(building, pad, at.xMm, at.yMm));
      if (!lies) operations.push({ kind: "pad.set", pad: padOf(names, at.xMm, at.yMm, topZUm, size) });
      if (!lies) set += 1;
    }
    if (!reachesGround(building, top, at)) return undefined;
  }
  return { operations, postIds, pads: set };
}

/** The middle of a post within the wall, its outer face flush with the rail's, so that it stands in every opening there. */
function inWall(unit: Unit, side: "left" | "right", uMm: number, halfMm: number): { xMm: number; yMm: number } {
  const yMm = (side === "left" ? 1 : -1) * (unit.dimensions.widthMm / 2 - halfMm + FLUSH_MM);
  return toSite(unit.frame, { xMm: uMm - unit.dimensions.lengthMm / 2, yMm, zMm: 0 });
}

/** Less than solids that only touch reach into each other, more than the micrometre a scheme stores. */
const FLUSH_MM = touchMm / 2;

/** The unit whose top lies right below this one at a place. */
function unitUnder(building: Building, above: Unit, at: { xMm: number; yMm: number }): Unit | undefined {
  if (Math.abs(above.baseZMm - building.groundZMm) <= mostPackingMm) return undefined;
  return building.units.find(
    ({ id, topZMm, outline }) =>
      id !== above.id && Math.abs(above.baseZMm - topZMm) <= mostPackingMm && holdsPoint(outline, at.xMm, at.yMm),
  );
}

function reachesGround(building: Building, top: Unit, at: { xMm: number; yMm: number }): boolean {
  let unit: Unit | undefined = top;
  while (unit !== undefined) {
    if (Math.abs(unit.baseZMm - building.groundZMm) <= mostPackingMm) return true;
    unit = unitUnder(building, unit, at);
  }
  return false;
}

const holds = (building: Building, { id }: Pad, xMm: number, yMm: number): boolean => {
  const pad = building.padById.get(id);
  return pad !== undefined && holdsPoint(pad.outline, xMm, yMm);
};

function postOf(
  names: FreshNames,
  xMm: number,
  yMm: number,
  baseZUm: number,
  topZUm: number,
  section: string,
  turnMdeg = 0,
): Post {
  return { ...names.next("P"), ...atUm(xMm, yMm), baseZUm, topZUm, turnMdeg, section };
}

function padOf(names: FreshNames, xMm: number, yMm: number, topZUm: number, { sideMm, depthMm }: PadSize): Pad {
  const size = { lengthUm: sideMm * 1000, widthUm: sideMm * 1000, depthUm: depthMm * 1000 };
  return { ...names.next("B"), ...atUm(xMm, yMm), topZUm, ...size, turnMdeg: 0 };
}

const atUm = (xMm: number, yMm: number) => ({ xUm: Math.round(xMm * 1000), yUm: Math.round(yMm * 1000) });
