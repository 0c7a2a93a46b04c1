import type { FittingName } from "@cornerway/schema";
import type { Rail } from "../fabric/fabric-of.ts";
import { beamsNear, padsNear, postsNear, unitsNear, type PlacedPost, type Unit } from "../geometry/building.ts";
import { toLocal } from "../geometry/place.ts";
import { alongBeam, beamTopMm } from "../geometry/placed-beam.ts";
import { holdsPoint, overlapDepthMm } from "../geometry/plan-rect.ts";
import { leastLapMm, mostPackingMm, touchMm } from "../geometry/tolerances.ts";
import type { Structure } from "./structure.ts";

/** What the foot of a post stands on. */
export type Footing =
  | { readonly on: "pad" | "post"; readonly elementId: string }
  | { readonly on: "fitting"; readonly elementId: string; readonly fitting: FittingName }
  | { readonly on: "beam"; readonly elementId: string; readonly uMm: number }
  /** The top rail of a unit below: a way down, but along a rail. */
  | { readonly on: "top rail"; readonly elementId: string; readonly rail: Rail; readonly uMm: number }
  /** The bottom rail of a unit with nothing beneath it, or its floor or roof sheet. */
  | { readonly on: "bottom rail" | "sheet"; readonly elementId: string }
  | { readonly on: "ground" }
  | { readonly on: "air" };

/** The nearest thing the foot of this post stands on, within the packing of a seat. */
export function postFooting(structure: Structure, post: PlacedPost): Footing {
  return (
    footingBelow(structure, post, post.footZMm, mostPackingMm) ??
    bottomRailFooting(structure, post) ??
    topFooting(structure, post, post.footZMm) ??
    groundFooting(structure, post.footZMm) ??
    sheetFooting(structure, post) ?? { on: "air" }
  );
}

/** A pad, the head of another post or a beam at a height. */
function footingBelow(structure: Structure, post: PlacedPost, zMm: number, packingMm: number): Footing | undefined {
  const { building } = structure;
  const fits = (topZMm: number) => zMm - topZMm >= -touchMm && zMm - topZMm <= packingMm;
  const pad = padsNear(building, post.outline).find(
    ({ outline, topZMm }) => fits(topZMm) && holdsPoint(outline, post.xMm, post.yMm),
  );
  if (pad !== undefined) return { on: "pad", elementId: pad.id };
  const below = postsNear(building, post.outline).find(
    ({ id, headZMm, outline }) =>
      id !== post.id && fits(headZMm) && overlapDepthMm(outline, post.outline) >= leastLapMm,
  );
  if (below !== undefined) return { on: "post", elementId: below.id };
  const beam = beamsNear(building, post.outline).find(
    (one) => fits(beamTopMm(one, alongBeam(one, post).uMm)) && overlapDepthMm(one.outline, post.outline) >= leastLapMm,
  );
  return beam === undefined ? undefined : { on: "beam", elementId: beam.id, uMm: alongBeam(beam, post).uMm };
}

/** A post set on the bottom rail of the unit it stands in: what counts is what the rail has beneath it there. */
function bottomRailFooting(structure: Structure, post: PlacedPost): Footing | undefined {
  const unit = unitsNear(structure.building, post.outline).find((one) => standsOnBottomRail(one, post));
  if (unit === undefined) return undefined;
  const underRailMm = unit.baseZMm + unit.dimensions.baseAboveFittingMm;
  return (
    footingBelow(structure, post, underRailMm, mostPackingMm) ??
    topFooting(structure, post, underRailMm) ?? { on: "bottom rail", elementId: unit.id }
  );
}

function standsOnBottomRail({ baseZMm, dimensions, frame }: Unit, post: PlacedPost): boolean {
  const railTopMm = baseZMm + dimensions.baseAboveFittingMm + dimensions.bottomRailDepthMm;
  if (Math.abs(post.footZMm - railTopMm) > mostPackingMm) return false;
  const { xMm, yMm } = toLocal(frame, { xMm: post.xMm, yMm: post.yMm, zMm: 0 });
  const halfWidth = dimensions.widthMm / 2;
  return (
    Math.abs(xMm) <= dimensions.lengthMm / 2 &&
    Math.abs(yMm) <= halfWidth + touchMm &&
    Math.abs(yMm) + post.outline.halfUMm >= halfWidth - dimensions.bottomRailWidthMm
  );
}

/** A fitting or a top rail of a unit below a height. */
function topFooting({ building, topParts }: Structure, post: PlacedPost, zMm: number): Footing | undefined {
  for (const unit of unitsNear(building, post.outline)) {
    const parts = topParts(unit.id);
    const gapMm = zMm - parts.fittingTopZMm;
    if (gapMm < -touchMm - unit.dimensions.proudOfRoofMm || gapMm > mostPackingMm) continue;
    const fitting = parts.fittings.find(({ outline }) => overlapDepthMm(outline, post.outline) >= leastLapMm);
    if (fitting !== undefined) return { on: "fitting", elementId: unit.id, fitting: fitting.name };
    const piece = parts.rails.find(({ outline }) => overlapDepthMm(outline, post.outline) >= leastLapMm);
    if (piece !== undefined)
      return { on: "top rail", elementId: unit.id, rail: piece.rail, uMm: alongRailMm(unit, piece.rail, post) };
  }
  return undefined;
}

/** How far along a rail a place is, mm, as openings of that face are measured. */
export function alongRailMm({ dimensions, frame }: Unit, rail: Rail, at: { xMm: number; yMm: number }): number {
  const { xMm, yMm } = toLocal(frame, { xMm: at.xMm, yMm: at.yMm, zMm: 0 });
  return rail === "left" || rail === "right" ? xMm + dimensions.lengthMm / 2 : yMm + dimensions.widthMm / 2;
}

const groundFooting = ({ building }: Structure, zMm: number): Footing | undefined =>
  Math.abs(zMm - building.groundZMm) <= mostPackingMm ? { on: "ground" } : undefined;

function sheetFooting({ building }: Structure, post: PlacedPost): Footing | undefined {
  const unit = unitsNear(building, post.outline).find(
    ({ baseZMm, topZMm, outline }) =>
      post.footZMm > baseZMm - touchMm &&
      post.footZMm <= topZMm + mostPackingMm &&
      holdsPoint(outline, post.xMm, post.yMm),
  );
  return unit === undefined ? undefined : { on: "sheet", elementId: unit.id };
}
