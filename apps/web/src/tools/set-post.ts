import { placeContainer, toLocal } from "@cornerway/engine";
import type { PlacedContainer } from "@cornerway/engine";
import type { Assessment, Operation, Post, Scheme } from "@cornerway/schema";
import { newElementId } from "./new-element-id.ts";
import { nextTag } from "./next-tag.ts";
import { carries } from "./pads-follow.ts";

/** A usual square tube; the engineer chooses the section. Common practice, no published source. */
export const usualPostSection = "HSS4x4x1/4";
const padSizeUm = { lengthUm: 900_000, widthUm: 900_000, depthUm: 450_000 };
const edgeMm = 5;

export interface PlanPointMm {
  xMm: number;
  yMm: number;
}

/**
 * A post from the underside of a unit down to the ground, on a pad of its own unless one is there. With `unitId` it
 * holds that unit; without, the lowest one above the ground at that place. Null where nothing is to be held.
 */
export function setPost(scheme: Scheme, at: PlanPointMm, unitId?: string): Operation[] | null {
  const head = headUm(scheme, at, unitId);
  const foot = scheme.site.groundZUm;
  if (head === null || head <= foot) return null;
  const post: Post = {
    id: newElementId("p"),
    tag: nextTag(scheme, "P"),
    xUm: Math.round(at.xMm * 1000),
    yUm: Math.round(at.yMm * 1000),
    baseZUm: foot,
    topZUm: head,
    turnMdeg: 0,
    section: usualPostSection,
  };
  return [{ kind: "post.set", post }, ...padUnder(scheme, post)];
}

/** How far two places are apart as the view shows it, mm. */
export type Apart = (a: PlanPointMm, b: PlanPointMm) => number;

/** Draws a place to the nearest bearing off the corners, or to the nearest bottom fitting, within `reachMm`. */
export function snapPost(
  scheme: Scheme,
  assessment: Assessment | null,
  at: PlanPointMm,
  reachMm: number,
  apart: Apart,
  unitId?: string,
): PlanPointMm {
  const concerns = (id: string) => unitId === undefined || id === unitId;
  const bearings = (assessment?.bearings ?? [])
    .filter((bearing) => concerns(bearing.unitId) && bearing.on !== "fitting" && bearing.on !== "pad")
    .map((bearing) => bearing.at);
  const feet = scheme.containers
    .filter(({ id, zUm }) => concerns(id) && zUm > scheme.site.groundZUm)
    .flatMap((unit) => placeContainer(unit).bottomFittings.map((fitting) => fitting.at));
  return nearest([...bearings, ...feet], at, reachMm, apart) ?? at;
}

function headUm(scheme: Scheme, at: PlanPointMm, unitId: string | undefined): number | null {
  const over = scheme.containers
    .filter(({ id, zUm }) => (unitId === undefined || id === unitId) && zUm > scheme.site.groundZUm)
    .filter((unit) => isUnder(placeContainer(unit), at))
    .map(({ zUm }) => zUm);
  return over.length === 0 ? null : Math.min(...over);
}

function isUnder({ frame, dimensions }: PlacedContainer, at: PlanPointMm): boolean {
  const { xMm, yMm } = toLocal(frame, { ...at, zMm: 0 });
  return Math.abs(xMm) <= dimensions.lengthMm / 2 + edgeMm && Math.abs(yMm) <= dimensions.widthMm / 2 + edgeMm;
}

function padUnder(scheme: Scheme, post: Post): Operation[] {
  const foot = { xMm: post.xUm / 1000, yMm: post.yUm / 1000, zMm: post.baseZUm / 1000 };
  if (scheme.pads.some((pad) => carries(pad, foot))) return [];
  const { xUm, yUm, baseZUm: topZUm } = post;
  const pad = { id: newElementId("b"), tag: nextTag(scheme, "B"), xUm, yUm, topZUm, ...padSizeUm, turnMdeg: 0 };
  return [{ kind: "pad.set", pad }];
}

const nearest = (places: readonly PlanPointMm[], at: PlanPointMm, reachMm: number, apart: Apart): PlanPointMm | null =>
  places.reduce<PlanPointMm | null>((best, place) => {
    const off = apart(place, at);
    return off <= reachMm && (best === null || off < apart(best, at)) ? place : best;
  }, null);
