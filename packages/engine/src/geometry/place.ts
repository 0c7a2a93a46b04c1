import type { Container, FittingName, PointMm } from "@cornerway/schema";
import { containerDimensions, type ContainerDimensions } from "../catalog/container-dimensions.ts";
import { LastMade } from "../numerics/last-made.ts";
import { cosDegThousandths, sinDegThousandths } from "../numerics/elementary.ts";

/** A turned frame in plan: where its origin is, mm, and the direction of its x axis. */
export type PlanFrame = {
  readonly xMm: number;
  readonly yMm: number;
  readonly zMm: number;
  readonly cos: number;
  readonly sin: number;
  readonly turnMdeg: number;
};

/** A corner fitting: the centre of its aperture, on its underside (bottom fittings) or its top (top fittings). */
export type PlacedFitting = {
  readonly name: FittingName;
  /** Local, from the centre of the container. */
  readonly localXMm: number;
  readonly localYMm: number;
  readonly at: PointMm;
};

/** A container as a solid in the site frame, mm, z up. */
export type PlacedContainer = {
  readonly id: string;
  readonly container: Container;
  readonly dimensions: ContainerDimensions;
  readonly frame: PlanFrame;
  readonly baseZMm: number;
  readonly topZMm: number;
  readonly bottomFittings: readonly PlacedFitting[];
  readonly topFittings: readonly PlacedFitting[];
};

/** The container in the site frame: frame origin at the centre of its base, x from front to door, y to the left. */
export const placeContainer = (container: Container): PlacedContainer =>
  placed.take(container, [], () => placedOf(container));

const placed = new LastMade<PlacedContainer>();

function placedOf(container: Container): PlacedContainer {
  const dimensions = containerDimensions(container.type);
  const frame = planFrame(container.xUm, container.yUm, container.zUm, container.turnMdeg);
  const topZMm = frame.zMm + dimensions.heightMm;
  const fittings = fittingPlaces(dimensions);
  return {
    id: container.id,
    container,
    dimensions,
    frame,
    baseZMm: frame.zMm,
    topZMm,
    bottomFittings: fittings.map((fitting) => placeFitting(frame, fitting, 0)),
    topFittings: fittings.map((fitting) => placeFitting(frame, fitting, dimensions.heightMm)),
  };
}

/** A plan frame from the integers the scheme stores; quarter turns are exact. */
export const planFrame = (xUm: number, yUm: number, zUm: number, turnMdeg: number): PlanFrame => ({
  xMm: xUm / 1000,
  yMm: yUm / 1000,
  zMm: zUm / 1000,
  cos: cosDegThousandths(turnMdeg),
  sin: sinDegThousandths(turnMdeg),
  turnMdeg,
});

/** A point of the local frame, mm, in the site frame, mm. */
export const toSite = (frame: PlanFrame, local: PointMm): PointMm => ({
  xMm: frame.xMm + local.xMm * frame.cos - local.yMm * frame.sin,
  yMm: frame.yMm + local.xMm * frame.sin + local.yMm * frame.cos,
  zMm: frame.zMm + local.zMm,
});

/** A point of the site frame, mm, in the local frame, mm. */
export const toLocal = (frame: PlanFrame, site: PointMm): PointMm => {
  const x = site.xMm - frame.xMm;
  const y = site.yMm - frame.yMm;
  return { xMm: x * frame.cos + y * frame.sin, yMm: y * frame.cos - x * frame.sin, zMm: site.zMm - frame.zMm };
};

/** The eight corners of the solid: the base anticlockwise from front right, then the roof likewise. */
export function solidCorners({ dimensions, frame }: PlacedContainer): PointMm[] {
  const x = dimensions.lengthMm / 2;
  const y = dimensions.widthMm / 2;
  return [0, dimensions.heightMm].flatMap((zMm) => [
    toSite(frame, { xMm: -x, yMm: -y, zMm }),
    toSite(frame, { xMm: x, yMm: -y, zMm }),
    toSite(frame, { xMm: x, yMm: y, zMm }),
    toSite(frame, { xMm: -x, yMm: y, zMm }),
  ]);
}

type LocalFitting = { name: FittingName; xMm: number; yMm: number };

function fittingPlaces(dimensions: ContainerDimensions): LocalFitting[] {
  const y = dimensions.holeSpacingCrosswiseMm / 2;
  const corner = dimensions.holeSpacingLengthwiseMm / 2;
  const between = dimensions.intermediateHoleSpacingMm / 2;
  const corners: LocalFitting[] = [
    { name: "front-right", xMm: -corner, yMm: -y },
    { name: "front-left", xMm: -corner, yMm: y },
    { name: "door-right", xMm: corner, yMm: -y },
    { name: "door-left", xMm: corner, yMm: y },
  ];
  if (between === 0) return corners;
  return [
    ...corners,
    { name: "front-right-inner", xMm: -between, yMm: -y },
    { name: "front-left-inner", xMm: -between, yMm: y },
    { name: "door-right-inner", xMm: between, yMm: -y },
    { name: "door-left-inner", xMm: between, yMm: y },
  ];
}

const placeFitting = (frame: PlanFrame, fitting: LocalFitting, zMm: number): PlacedFitting => ({
  name: fitting.name,
  localXMm: fitting.xMm,
  localYMm: fitting.yMm,
  at: toSite(frame, { xMm: fitting.xMm, yMm: fitting.yMm, zMm }),
});
