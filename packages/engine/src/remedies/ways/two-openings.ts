import type { Opening, Operation } from "@cornerway/schema";
import { FreshNames } from "../fresh-names.ts";
import type { RemedyGround } from "../trial.ts";
import { leastWidthMm, shaped, toUm, type OpeningOnFace } from "./face-of-opening.ts";

/** A stretch of the face, mm from its origin. */
export type Stretch = { readonly u0: number; readonly u1: number };

/** The opening parted in two: what is drawn becomes the first, the second is new and like it. */
export function twoOpenings(
  place: OpeningOnFace,
  first: Stretch,
  second: Stretch,
  { scheme }: RemedyGround,
): Operation[] {
  const { opening, rect } = place;
  const { use } = opening;
  const other: Opening = {
    ...opening,
    use: use === "open-wall" ? "passage" : use,
    ...new FreshNames(scheme).next(capitals[use]),
    offsetUm: toUm(second.u0),
    widthUm: toUm(second.u1 - second.u0),
  };
  return [shaped(place, { ...rect, ...first }), { kind: "opening.cut", opening: other }];
}

/** Whether both are wide enough for what the opening is for. A wall that is out in two may be two doors wide each. */
export const areWideEnough = ({ opening: { use } }: OpeningOnFace, ...stretches: readonly Stretch[]): boolean =>
  stretches.every(({ u0, u1 }) => u1 - u0 >= (use === "open-wall" ? leastWidthMm.door : leastWidthMm[use]));

/** Where a pier between two openings stands: under what comes down on the rail over them, else in their middle. */
export const pierAtMm = ({ rect: { u0, u1 }, loadsAtMm }: OpeningOnFace): number =>
  loadsAtMm.find((uMm) => uMm > u0 && uMm < u1) ?? (u0 + u1) / 2;

/** 4 ft is the least pier of the code's table of container walls; the shorter one is whole sheet for the spread of a load. */
export const PIERS_MM = [700, 1220] as const;

const capitals: Readonly<Record<Opening["use"], string>> = {
  ...{ door: "D", passage: "D", window: "W", "open-wall": "O", hatch: "H" },
};
