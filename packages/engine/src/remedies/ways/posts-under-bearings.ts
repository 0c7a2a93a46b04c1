import type { Rail } from "../../fabric/fabric-of.ts";
import { FreshNames } from "../fresh-names.ts";
import { postsInWall } from "../set-posts.ts";
import { postRungs } from "../usual-steel.ts";
import { openingOfMark, type OpeningOnFace } from "./face-of-opening.ts";
import type { Generator, RemedyGround, Trial } from "../trial.ts";

/** Posts in the walls below, right under where the unit comes down on a rail, down to the ground. */
export const postsUnderBearings: Generator = (ground) => {
  const places = railPlaces(ground);
  if (places.length === 0) return [];
  const { scheme, analysis, mark } = ground;
  const trials = postRungs.flatMap(({ section, pad }): Trial[] => {
    const set = postsInWall(scheme, analysis.structure.building, new FreshNames(scheme), places, section, pad);
    if (set === undefined) return [];
    const { operations, postIds, pads } = set;
    const unitId = places[0]?.unitId ?? mark.elements[0] ?? "";
    const padMm = pads === 0 ? null : pad.sideMm;
    return [
      { change: { kind: "posts", unitId, postIds, under: "bearings", section, padMm, header: null }, operations },
    ];
  });
  return trials.length === 0 ? [] : [trials];
};

type Place = { readonly unitId: string; readonly rail: Rail; readonly uMm: number };

/** Where the mark's unit, or what stands over its opening, comes down on rails. */
function railPlaces(ground: RemedyGround): Place[] {
  const { analysis, mark } = ground;
  const { railLoads } = analysis.run;
  const named = new Set(mark.elements);
  const opening = openingOfMark(ground);
  const own =
    mark.fact.kind === "load-over-opening"
      ? railLoads.filter((load) => named.has(load.unitId) && named.has(load.fromId) && isOver(opening, load))
      : railLoads.filter(({ fromId }) => fromId === mark.elements[0]);
  const near: Place[] = [];
  for (const { unitId, rail, uMm } of own)
    if (!near.some((one) => one.unitId === unitId && one.rail === rail && Math.abs(one.uMm - uMm) < SAME_MM))
      near.push({ unitId, rail, uMm });
  return near;
}

const isOver = (place: OpeningOnFace | undefined, { rail, uMm }: Place): boolean =>
  place === undefined || (place.opening.face === rail && uMm >= place.rect.u0 && uMm <= place.rect.u1);

/** Two loads this near on one rail stand on one post, mm. */
const SAME_MM = 200;
