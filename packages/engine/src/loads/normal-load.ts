import { toSite, type PlanFrame } from "../geometry/place.ts";
import type { ActionLoad } from "./action-case.ts";
import type { ExposedFace, Side } from "./exposed-faces.ts";
import { facePatch, meanPressure, pointOf, type PlanePressure } from "./face-patch.ts";
import { areaOf, type Rect } from "./uncovered.ts";

/**
 * Pressure on part of an exposed side, positive towards it. On a unit not parallel to the axes there is no such face:
 * the force stands at the middle of its enclosing box's side.
 */
export function normalLoad(axes: PlanFrame, exposed: ExposedFace, rect: Rect, pressure: PlanePressure): ActionLoad {
  const { unit, side, face, atMm } = exposed;
  if (face !== undefined && unit.faces !== undefined)
    return { kind: "against", containerId: unit.id, face, patch: facePatch(axes, exposed, rect, pressure) };
  const forceN = (meanPressure(rect, pressure) * areaOf(rect)) / 1e6;
  const inward = inwards[side];
  const direction = toSite({ ...axes, xMm: 0, yMm: 0, zMm: 0 }, { xMm: inward[0], yMm: inward[1], zMm: inward[2] });
  const at = toSite(axes, pointOf(side, (rect.u0 + rect.u1) / 2, (rect.v0 + rect.v1) / 2, atMm));
  return {
    kind: "point",
    elementId: unit.id,
    at,
    xN: forceN * direction.xMm,
    yN: forceN * direction.yMm,
    zN: forceN * direction.zMm,
  };
}

const inwards: Readonly<Record<Side, readonly [number, number, number]>> = {
  "+x": [-1, 0, 0],
  "-x": [1, 0, 0],
  "+y": [0, -1, 0],
  "-y": [0, 1, 0],
  up: [0, 0, -1],
  down: [0, 0, 1],
};
