import type { Container, Face, Scheme } from "@cornerway/schema";
import { faceFrame } from "../geometry/face-frame.ts";
import {
  placeContainer,
  planFrame,
  solidCorners,
  toLocal,
  type PlacedContainer,
  type PlanFrame,
} from "../geometry/place.ts";
import { LastMade } from "../numerics/last-made.ts";
import type { WindDirection } from "./wind-shape.ts";

/** A unit as a box in the building's axes, mm. A unit not parallel to them stands for its enclosing box. */
export type UnitBox = BoxMm & {
  readonly id: string;
  readonly placed: PlacedContainer;
  /** Which face looks which way; absent for a unit not parallel to the axes. */
  readonly faces?: Readonly<Record<WindDirection, Face>>;
};

export type BoxMm = {
  readonly x0: number;
  readonly x1: number;
  readonly y0: number;
  readonly y1: number;
  readonly z0: number;
  readonly z1: number;
};

/** The building in its own axes: turned like most of its plan area, origin and heights as the site's. */
export type BuildingFrame = {
  readonly axes: PlanFrame;
  readonly boxes: readonly UnitBox[];
  readonly outline: BoxMm;
  readonly groundZMm: number;
};

/** Undefined for a scheme without containers. Boxes are in the order of the scheme. */
export function buildingFrame(scheme: Scheme): BuildingFrame | undefined {
  const { containers, site } = scheme;
  if (containers.length === 0) return undefined;
  return frames.take(containers, [site.groundZUm], () => {
    const axes = planFrame(0, 0, 0, mainTurn(containers));
    const boxes = containers.map((container) => unitBox(axes, placeContainer(container)));
    return { axes, boxes, outline: outlineOf(boxes), groundZMm: site.groundZUm / 1000 };
  });
}

const frames = new LastMade<BuildingFrame>();

/** The box around several. */
export const outlineOf = (boxes: readonly BoxMm[]): BoxMm => ({
  x0: Math.min(...boxes.map(({ x0 }) => x0)),
  x1: Math.max(...boxes.map(({ x1 }) => x1)),
  y0: Math.min(...boxes.map(({ y0 }) => y0)),
  y1: Math.max(...boxes.map(({ y1 }) => y1)),
  z0: Math.min(...boxes.map(({ z0 }) => z0)),
  z1: Math.max(...boxes.map(({ z1 }) => z1)),
});

/** Quarter turns share axes; of the rest the turn with most plan area, the smaller one of equals. */
function mainTurn(containers: readonly Container[]): number {
  const areas = new Map<number, number>();
  for (const container of containers) {
    const { lengthMm, widthMm } = placeContainer(container).dimensions;
    const turn = container.turnMdeg % 90_000;
    areas.set(turn, (areas.get(turn) ?? 0) + lengthMm * widthMm);
  }
  const [first] = [...areas].toSorted(([turnA, a], [turnB, b]) => b - a || turnA - turnB);
  return first?.[0] ?? 0;
}

function unitBox(axes: PlanFrame, placed: PlacedContainer): UnitBox {
  const corners = solidCorners(placed).map((corner) => toLocal(axes, corner));
  const faces = facesOf(axes, placed);
  return {
    id: placed.id,
    placed,
    x0: Math.min(...corners.map(({ xMm }) => xMm)),
    x1: Math.max(...corners.map(({ xMm }) => xMm)),
    y0: Math.min(...corners.map(({ yMm }) => yMm)),
    y1: Math.max(...corners.map(({ yMm }) => yMm)),
    z0: placed.baseZMm,
    z1: placed.topZMm,
    ...(faces === undefined ? {} : { faces }),
  };
}

function facesOf(axes: PlanFrame, placed: PlacedContainer): UnitBox["faces"] {
  if ((placed.frame.turnMdeg - axes.turnMdeg) % 90_000 !== 0) return undefined;
  const sides: Record<WindDirection, Face> = { "+x": "door", "-x": "front", "+y": "left", "-y": "right" };
  for (const face of ["left", "right", "front", "door"] as const) {
    const { normal } = faceFrame(placed, face);
    const { xMm, yMm } = toLocal(axes, normal);
    sides[Math.abs(xMm) > Math.abs(yMm) ? (xMm > 0 ? "+x" : "-x") : yMm > 0 ? "+y" : "-y"] = face;
  }
  return sides;
}
