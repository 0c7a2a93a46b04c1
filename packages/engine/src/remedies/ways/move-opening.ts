import { compassPoint } from "../../marks/compass.ts";
import type { Generator, Ladder, Trial } from "../trial.ts";
import { isFree, openingOfMark, shaped, type OpeningOnFace } from "./face-of-opening.ts";

/** The opening as it is, further along its wall to where nothing comes down on it: the nearest places, one way and the other. */
export const moveOpening: Generator = (ground) => {
  const place = openingOfMark(ground);
  if (
    place === undefined ||
    !(place.opening.face === "left" || place.opening.face === "right" || place.opening.face === "front")
  )
    return [];
  const { northMdeg } = ground.analysis.structure.building;
  return [-1, 1].map((way) => ladder(place, way, northMdeg)).filter((rungs) => rungs.length > 0);
};

/** Boundaries are told to 50 mm. */
const STEP_MM = 50;
/** Of the places free one way, so many are looked at: the nearest, then each further by as much as makes a difference. */
const MOST = 4;
const APART_STEPS = 6;

function ladder(place: OpeningOnFace, way: number, northMdeg: number): Ladder {
  const { rect, opening, along, sheet } = place;
  const trials: Trial[] = [];
  const most = Math.floor((sheet.u1 - sheet.u0) / STEP_MM);
  for (let steps = 1; steps <= most && trials.length < MOST;) {
    const byMm = steps * STEP_MM;
    const [u0, u1] = [rect.u0 + way * byMm, rect.u1 + way * byMm];
    if (!isFree(place, u0, u1)) {
      steps += 1;
      continue;
    }
    const towards = compassPoint(way * along.xMm, way * along.yMm, northMdeg);
    trials.push({
      change: { kind: "move opening", openingId: opening.id, byMm, towards },
      operations: [shaped(place, { ...rect, u0, u1 })],
    });
    steps += APART_STEPS;
  }
  return trials;
}
