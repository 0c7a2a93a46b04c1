import type { FaceRect } from "../catalog/container-dimensions.ts";
import { toLocal, toSite, type PlanFrame } from "../geometry/place.ts";
import { evenPatch, type Patch } from "./action-case.ts";
import type { UnitBox } from "./building-frame.ts";
import type { ExposedFace, Side } from "./exposed-faces.ts";
import type { Rect } from "./uncovered.ts";

/** Pressure over a rectangle in the building's axes: at its (u0, v0) corner, and its growth along u and v. */
export type PlanePressure = {
  readonly pressurePa: number;
  readonly alongUPaPerMm: number;
  readonly alongVPaPerMm: number;
};

/** A rectangle of a unit's side, in the building's axes, as a patch of the container's face with its pressure. */
export function facePatch(
  axes: PlanFrame,
  { unit, side, atMm }: Pick<ExposedFace, "unit" | "side" | "atMm">,
  rect: Rect,
  pressure: PlanePressure,
): Patch {
  const from = faceCoordinates(axes, unit, side, rect.u0, rect.v0, atMm);
  const alongU = faceCoordinates(axes, unit, side, rect.u1, rect.v0, atMm);
  const alongV = faceCoordinates(axes, unit, side, rect.u0, rect.v1, atMm);
  const to = faceCoordinates(axes, unit, side, rect.u1, rect.v1, atMm);
  const wide = rect.u1 - rect.u0;
  const high = rect.v1 - rect.v0;
  const rises = [
    { du: alongU.u - from.u, dv: alongU.v - from.v, rise: pressure.alongUPaPerMm * wide },
    { du: alongV.u - from.u, dv: alongV.v - from.v, rise: pressure.alongVPaPerMm * high },
  ];
  const along = (key: "du" | "dv") =>
    rises.reduce(
      (sum, one) => (Math.abs(one[key]) > Math.abs(one[key === "du" ? "dv" : "du"]) ? sum + one.rise / one[key] : sum),
      0,
    );
  const faceRect: FaceRect = {
    u0: Math.min(from.u, to.u),
    u1: Math.max(from.u, to.u),
    v0: Math.min(from.v, to.v),
    v1: Math.max(from.v, to.v),
  };
  const alongUPaPerMm = along("du");
  const alongVPaPerMm = along("dv");
  return {
    rect: faceRect,
    pressurePa: pressure.pressurePa + alongUPaPerMm * (faceRect.u0 - from.u) + alongVPaPerMm * (faceRect.v0 - from.v),
    alongUPaPerMm,
    alongVPaPerMm,
  };
}

/** A patch of a roof; a unit not parallel to the axes takes the mean pressure over its whole roof. */
export function roofPatch(
  axes: PlanFrame,
  roof: Pick<ExposedFace, "unit" | "side" | "atMm">,
  rect: Rect,
  pressure: PlanePressure,
): Patch {
  if (roof.unit.faces !== undefined) return facePatch(axes, roof, rect, pressure);
  return evenPatch(roof.unit.placed.dimensions.face("roof"), meanPressure(rect, pressure));
}

export const even = (pressurePa: number): PlanePressure => ({ pressurePa, alongUPaPerMm: 0, alongVPaPerMm: 0 });

/** The pressure at the middle of a rectangle. */
export const meanPressure = (rect: Rect, { pressurePa, alongUPaPerMm, alongVPaPerMm }: PlanePressure): number =>
  pressurePa + (alongUPaPerMm * (rect.u1 - rect.u0)) / 2 + (alongVPaPerMm * (rect.v1 - rect.v0)) / 2;

/** Where a point of a side lies on the container's own face, measured as openings are. */
function faceCoordinates(axes: PlanFrame, unit: UnitBox, side: Side, u: number, v: number, atMm: number) {
  const { dimensions, frame } = unit.placed;
  const { xMm, yMm, zMm } = toLocal(frame, toSite(axes, pointOf(side, u, v, atMm)));
  const alongLength = xMm + dimensions.lengthMm / 2;
  const alongWidth = yMm + dimensions.widthMm / 2;
  if (side === "up" || side === "down") return { u: alongLength, v: alongWidth };
  const face = unit.faces?.[side];
  return { u: face === "left" || face === "right" ? alongLength : alongWidth, v: zMm };
}

/** A point of a side's plane in the building's axes. */
export function pointOf(side: Side, u: number, v: number, atMm: number): { xMm: number; yMm: number; zMm: number } {
  if (side === "+x" || side === "-x") return { xMm: atMm, yMm: u, zMm: v };
  if (side === "+y" || side === "-y") return { xMm: u, yMm: atMm, zMm: v };
  return { xMm: u, yMm: v, zMm: atMm };
}
