import type { Opening, Operation, PointMm } from "@cornerway/schema";
import type { FaceRect } from "../../catalog/container-dimensions.ts";
import { openingRect } from "../../fabric/opening-rect.ts";
import { faceFrame } from "../../geometry/face-frame.ts";
import type { Unit } from "../../geometry/building.ts";
import type { RemedyGround } from "../trial.ts";

/** An opening a mark is about, on its face: lengths mm, u from the front end (ends: from the right side). */
export type OpeningOnFace = {
  readonly opening: Opening;
  readonly unit: Unit;
  readonly rect: FaceRect;
  /** What lies between the protected members. */
  readonly sheet: FaceRect;
  /** The other openings of the face. */
  readonly others: readonly FaceRect[];
  /** Direction of u in the site frame. */
  readonly along: PointMm;
  /** Where loads come down on the top rail of this face. */
  readonly loadsAtMm: readonly number[];
};

/** The first opening a mark names, on its face. */
export function openingOfMark({ analysis, scheme, mark }: RemedyGround): OpeningOnFace | undefined {
  const opening = mark.elements
    .map((id) => scheme.openings.find((one) => one.id === id))
    .find((one) => one !== undefined);
  const unit = opening && analysis.structure.building.unitById.get(opening.containerId);
  if (opening === undefined || unit === undefined) return undefined;
  const { face } = opening;
  return {
    opening,
    unit,
    rect: openingRect(opening),
    sheet: unit.dimensions.sheetZone(face),
    others: unit.openings.filter((one) => one.face === face && one.id !== opening.id).map(openingRect),
    along: faceFrame(unit, face).u,
    loadsAtMm: analysis.run.railLoads
      .filter((load) => load.unitId === unit.id && load.rail === face)
      .map(({ uMm }) => uMm),
  };
}

/** Clear wall left between two openings, and between an opening and what comes down, mm. Common practice, no published source. */
export const CLEAR_MM = 300;

/** Whether a stretch of the face is free for an opening: in the sheet, apart from others, and nothing coming down on it. */
export const isFree = ({ sheet, others, loadsAtMm, rect }: OpeningOnFace, u0: number, u1: number): boolean =>
  u0 >= sheet.u0 &&
  u1 <= sheet.u1 &&
  others.every((other) => {
    const besides = other.v1 <= rect.v0 || other.v0 >= rect.v1;
    return besides || other.u1 + CLEAR_MM <= u0 || other.u0 - CLEAR_MM >= u1;
  }) &&
  loadsAtMm.every((at) => at <= u0 - LOAD_CLEAR_MM || at >= u1 + LOAD_CLEAR_MM);

/** What comes down spreads so far to either side on its way to mid height, mm: the check of the sheet asks that it be whole there. */
const LOAD_CLEAR_MM = 300;

/** Narrowest clear width by use, mm: common practice, no published source. */
export const leastWidthMm: Readonly<Record<Opening["use"], number>> = {
  door: 900,
  passage: 900,
  window: 600,
  "open-wall": 2400,
  hatch: 700,
};

/** Lowest clear height by use, mm: common practice, no published source. */
export const leastHeightMm: Readonly<Record<Opening["use"], number>> = {
  door: 2000,
  passage: 2000,
  window: 600,
  "open-wall": 2000,
  hatch: 700,
};

export const toUm = (mm: number): number => Math.round(mm * 1000);

/** The opening with another shape. A wall that is out is out from post to post: with wall left beside it, it is a passage. */
export function shaped({ opening }: OpeningOnFace, { u0, u1, v0, v1 }: FaceRect): Operation {
  const shape = { offsetUm: toUm(u0), sillUm: toUm(v0), widthUm: toUm(u1 - u0), heightUm: toUm(v1 - v0) };
  return opening.use === "open-wall"
    ? { kind: "opening.change", opening: { ...opening, ...shape, use: "passage" } }
    : { kind: "opening.shape", id: opening.id, ...shape };
}
