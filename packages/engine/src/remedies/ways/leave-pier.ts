import type { Opening } from "@cornerway/schema";
import { FreshNames } from "../fresh-names.ts";
import type { Generator, Trial } from "../trial.ts";
import { leastWidthMm, openingOfMark, shaped, toUm, type OpeningOnFace } from "./face-of-opening.ts";

/** Two openings with a pier of wall left between them: under what comes down on the rail, else in the middle. */
export const leavePier: Generator = (ground) => {
  const place = openingOfMark(ground);
  if (place === undefined || place.opening.face === "roof" || place.opening.face === "floor") return [];
  const { rect, loadsAtMm } = place;
  const at = loadsAtMm.find((uMm) => uMm > rect.u0 && uMm < rect.u1) ?? (rect.u0 + rect.u1) / 2;
  const trials = PIERS_MM.flatMap((pierMm) => split(place, at, pierMm, new FreshNames(ground.scheme)) ?? []);
  return trials.length === 0 ? [] : [trials];
};

/** 4 ft is the least pier of the code's table of container walls; the shorter one is whole sheet for the spread of a load. */
const PIERS_MM = [700, 1220];

function split(place: OpeningOnFace, atMm: number, pierMm: number, names: FreshNames): Trial | undefined {
  const { opening, rect } = place;
  const [to, from] = [atMm - pierMm / 2, atMm + pierMm / 2];
  const least = LEAST_MM[opening.use] ?? leastWidthMm[opening.use];
  if (to - rect.u0 < least || rect.u1 - from < least) return undefined;
  const second: Opening = {
    ...opening,
    use: opening.use === "open-wall" ? "passage" : opening.use,
    ...names.next(capitals[opening.use]),
    offsetUm: toUm(from),
    widthUm: toUm(rect.u1 - from),
  };
  return {
    change: { kind: "leave a pier", openingId: opening.id, pierMm },
    operations: [shaped(place, { ...rect, u1: to }), { kind: "opening.cut", opening: second }],
  };
}

/** A wall that is out in two may be two doors wide each. */
const LEAST_MM: Partial<Record<Opening["use"], number>> = { "open-wall": 900 };

const capitals: Readonly<Record<Opening["use"], string>> = {
  ...{ door: "D", passage: "D", window: "W", "open-wall": "O", hatch: "H" },
};
