import type { FactOf, Opening } from "@cornerway/schema";
import { openingRect } from "../fabric/opening-rect.ts";
import type { PlacedPost, Unit } from "../geometry/building.ts";
import { toLocal } from "../geometry/place.ts";
import { overlapDepthMm } from "../geometry/plan-rect.ts";
import { touchMm } from "../geometry/tolerances.ts";
import { fittingOutline, railOutline } from "../bearing/top-parts.ts";

/** The door, window or passage whose clear width this post stands in; an open wall is there to be held up. */
export function openingAround(unit: Unit, post: PlacedPost): Opening | undefined {
  const { xMm, yMm } = toLocal(unit.frame, { xMm: post.xMm, yMm: post.yMm, zMm: 0 });
  const { lengthMm, widthMm } = unit.dimensions;
  const half = post.outline.halfUMm;
  return unit.openings.find((opening) => {
    if (opening.use === "open-wall" || opening.face === "roof" || opening.face === "floor") return false;
    const isSide = opening.face === "left" || opening.face === "right";
    const u = isSide ? xMm + lengthMm / 2 : yMm + widthMm / 2;
    const toFaceMm = distanceToFace(opening.face, xMm, yMm, lengthMm, widthMm);
    const { u0, u1, v0, v1 } = openingRect(opening);
    const inHeight = Math.min(post.headZMm, unit.baseZMm + v1) - Math.max(post.footZMm, unit.baseZMm + v0) > touchMm;
    return toFaceMm < half && inHeight && u + half > u0 + touchMm && u - half < u1 - touchMm;
  });
}

function distanceToFace(face: Opening["face"], xMm: number, yMm: number, lengthMm: number, widthMm: number): number {
  if (face === "left") return Math.abs(yMm - widthMm / 2);
  if (face === "right") return Math.abs(yMm + widthMm / 2);
  return Math.abs(face === "front" ? xMm + lengthMm / 2 : xMm - lengthMm / 2);
}

/** The parts of this unit the post runs through: members it cannot share a place with, else roof and floor. */
export function throughUnit(unit: Unit, post: PlacedPost): FactOf<"post-through-unit">["through"][] {
  if (overlapDepthMm(unit.outline, post.outline) <= touchMm) return [];
  const { dimensions, baseZMm, topZMm } = unit;
  const sheet = dimensions.sheetZone("left");
  const meets = (fromZ: number, toZ: number) =>
    Math.min(post.headZMm, baseZMm + toZ) - Math.max(post.footZMm, baseZMm + fromZ) > passMm;
  if (Math.min(post.headZMm, topZMm) - Math.max(post.footZMm, baseZMm) <= passMm) return [];
  if (
    unit.bottomFittings.some(
      (f) => overlapDepthMm(fittingOutline(unit, f.localXMm, f.localYMm), post.outline) > touchMm,
    )
  )
    return ["corner post"];
  const top = meets(sheet.v1, dimensions.heightMm);
  const bottom = meets(0, sheet.v0);
  const onSide = strips(unit, ["left", "right"], post);
  const onEnd = strips(unit, ["front"], post);
  const onDoor = strips(unit, ["door"], post);
  if (onSide) return [...(top ? (["top side rail"] as const) : []), ...(bottom ? (["bottom side rail"] as const) : [])];
  if (onEnd) return [...(top ? (["top end rail"] as const) : []), ...(bottom ? (["bottom end rail"] as const) : [])];
  if (onDoor) return [...(top ? (["door header"] as const) : []), ...(bottom ? (["door sill"] as const) : [])];
  return [...(top ? (["roof"] as const) : []), ...(bottom ? (["floor"] as const) : [])];
}

/** Packing and bearing plates reach into a member by less than this, mm. Common practice. */
const passMm = 26;

/** Whether a post lies in the plan of a rail; the posts' own place beside a rail's inner face does not count. */
const strips = (unit: Unit, rails: readonly ("left" | "right" | "front" | "door")[], post: PlacedPost): boolean =>
  rails.some((rail) => {
    const isSide = rail === "left" || rail === "right";
    const lengthMm = isSide ? unit.dimensions.lengthMm : unit.dimensions.widthMm;
    return overlapDepthMm(railOutline(unit, rail, 0, lengthMm), post.outline) > touchMm;
  });
