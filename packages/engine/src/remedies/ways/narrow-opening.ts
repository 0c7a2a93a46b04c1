import { compassPoint } from "../../marks/compass.ts";
import type { Generator, Ladder, Trial } from "../trial.ts";
import { isFree, leastWidthMm, openingOfMark, shaped, type OpeningOnFace } from "./face-of-opening.ts";

/** Narrower about its middle, or from either side; where a load comes down on it, clear of that. */
export const narrowOpening: Generator = (ground) => {
  const place = openingOfMark(ground);
  if (place === undefined) return [];
  const { northMdeg } = ground.analysis.structure.building;
  return (["both sides", "near side", "far side"] as const)
    .map((from) => ladder(place, from, northMdeg))
    .filter((rungs) => rungs.length > 0);
};

/** Parts of its width that are taken off in turn. */
const SHARES = [0.2, 0.35, 0.5, 0.65];
const STEP_MM = 50;

function ladder(place: OpeningOnFace, from: "both sides" | "near side" | "far side", northMdeg: number): Ladder {
  const { rect, opening, along } = place;
  const widthMm = rect.u1 - rect.u0;
  const underLoad = place.loadsAtMm.some((uMm) => uMm > rect.u0 && uMm < rect.u1);
  const way = from === "near side" ? -1 : 1;
  const takenFrom = from === "both sides" ? from : compassPoint(way * along.xMm, way * along.yMm, northMdeg);
  return SHARES.flatMap((share): Trial[] => {
    const toMm = Math.floor((widthMm * (1 - share)) / STEP_MM) * STEP_MM;
    if (toMm < leastWidthMm[opening.use]) return [];
    const off = widthMm - toMm;
    const u0 = from === "both sides" ? rect.u0 + off / 2 : from === "near side" ? rect.u0 + off : rect.u0;
    if (underLoad && !isFree(place, u0, u0 + toMm)) return [];
    return [
      {
        change: { kind: "narrow opening", openingId: opening.id, fromMm: widthMm, toMm, from: takenFrom },
        operations: [shaped(place, { ...rect, u0, u1: u0 + toMm })],
      },
    ];
  });
}
