import { FreshNames } from "../fresh-names.ts";
import { postsInWall, type WallPlace } from "../set-posts.ts";
import { postSections, usualPad } from "../usual-steel.ts";
import { openingOfMark, type OpeningOnFace } from "./face-of-opening.ts";
import type { Generator, RemedyGround } from "../trial.ts";

/** Posts in the walls below, right under where the unit comes down on a rail, down to the ground. */
export const postsUnderBearings: Generator = (ground) => {
  const places = railPlaces(ground);
  if (places.length === 0) return [];
  const { scheme, analysis, mark } = ground;
  const [section] = postSections;
  const set = postsInWall(scheme, analysis.structure.building, new FreshNames(scheme), places, section, usualPad);
  if (set === undefined) return [];
  const { operations, postIds, pads } = set;
  const unitId = places[0]?.unitId ?? mark.elements[0] ?? "";
  const padMm = pads === 0 ? null : usualPad.sideMm;
  const change = { kind: "posts", unitId, postIds, under: "bearings", section, padMm, header: null } as const;
  return [[{ change, operations }]];
};

/** Where the mark's unit, or what stands over its opening, comes down on rails. */
function railPlaces(ground: RemedyGround): WallPlace[] {
  const { analysis, mark } = ground;
  const { railLoads } = analysis.run;
  const named = new Set(mark.elements);
  const opening = openingOfMark(ground);
  const own =
    mark.fact.kind === "load-over-opening"
      ? railLoads.filter((load) => named.has(load.unitId) && named.has(load.fromId) && isOver(opening, load))
      : railLoads.filter(({ fromId }) => fromId === mark.elements[0]);
  const near: WallPlace[] = [];
  for (const { unitId, rail, uMm } of own)
    if (!near.some((one) => one.unitId === unitId && one.rail === rail && Math.abs(one.uMm - uMm) < SAME_MM))
      near.push({ unitId, rail, uMm });
  return near;
}

const isOver = (place: OpeningOnFace | undefined, { rail, uMm }: WallPlace): boolean =>
  place === undefined || (place.opening.face === rail && uMm >= place.rect.u0 && uMm <= place.rect.u1);

/** Two loads this near on one rail stand on one post, mm. */
const SAME_MM = 200;
