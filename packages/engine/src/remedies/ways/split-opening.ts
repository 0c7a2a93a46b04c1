import type { Generator, Trial } from "../trial.ts";
import { isFree, openingOfMark, type OpeningOnFace } from "./face-of-opening.ts";
import { areWideEnough, pierAtMm, PIERS_MM, twoOpenings, type Stretch } from "./two-openings.ts";

/**
 * Two openings half as wide each, apart by ever more wall: no clear width is lost. The pair stands about where a pier would, or as
 * near to that as the wall is free for both.
 */
export const splitOpening: Generator = (ground) => {
  const place = openingOfMark(ground);
  if (place === undefined || place.opening.face === "roof" || place.opening.face === "floor") return [];
  const { opening, rect } = place;
  const eachMm = (rect.u1 - rect.u0) / 2;
  const trials = [...PIERS_MM, ...WIDER_MM].flatMap((pierMm): Trial[] => {
    const pair = freePair(place, eachMm, pierMm);
    if (pair === undefined || !areWideEnough(place, ...pair)) return [];
    const operations = twoOpenings(place, ...pair, ground);
    return [{ change: { kind: "split opening", openingId: opening.id, eachMm, pierMm }, operations }];
  });
  return trials.length === 0 ? [] : [trials];
};

/** Wider piers that are tried. Judged: each is proved as it stands. */
const WIDER_MM = [1800, 2400] as const;

/** Boundaries are told to 50 mm. */
const STEP_MM = 50;

function freePair(place: OpeningOnFace, eachMm: number, pierMm: number): readonly [Stretch, Stretch] | undefined {
  const most = Math.floor((place.sheet.u1 - place.sheet.u0) / STEP_MM);
  for (let steps = 0; steps <= most; steps += 1)
    for (const way of steps === 0 ? [1] : [-1, 1]) {
      const pair = pairAbout(pierAtMm(place) + way * steps * STEP_MM, eachMm, pierMm);
      if (pair.every(({ u0, u1 }) => isFree(place, u0, u1))) return pair;
    }
  return undefined;
}

const pairAbout = (atMm: number, eachMm: number, pierMm: number): readonly [Stretch, Stretch] => [
  { u0: atMm - pierMm / 2 - eachMm, u1: atMm - pierMm / 2 },
  { u0: atMm + pierMm / 2, u1: atMm + pierMm / 2 + eachMm },
];
