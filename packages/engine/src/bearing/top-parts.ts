import type { FittingName } from "@cornerway/schema";
import type { Fabric, Rail } from "../fabric/fabric-of.ts";
import type { Unit } from "../geometry/building.ts";
import { planRect, type PlanRect } from "../geometry/plan-rect.ts";

/** A top fitting: its body in plan and the centre of its aperture, mm. */
export type TopFitting = {
  readonly name: FittingName;
  readonly outline: PlanRect;
  readonly xMm: number;
  readonly yMm: number;
};

/** A whole piece of a top rail or header; `u` runs along it as on its face, mm from the outline. */
export type TopRailPiece = {
  readonly rail: Rail;
  readonly u0: number;
  readonly u1: number;
  readonly outline: PlanRect;
};

/** What another unit can stand on at the top of this one, with the heights of each kind, mm. */
export type TopParts = {
  readonly fittings: readonly TopFitting[];
  readonly rails: readonly TopRailPiece[];
  readonly fittingTopZMm: number;
  readonly railTopZMm: number;
};

/** The top fittings and the whole pieces of top rails and headers between them. */
export function topPartsOf(unit: Unit, fabric: Fabric): TopParts {
  const { dimensions } = unit;
  return {
    fittings: unit.topFittings.map(({ name, localXMm, localYMm, at }) => ({
      name,
      outline: fittingOutline(unit, localXMm, localYMm),
      xMm: at.xMm,
      yMm: at.yMm,
    })),
    rails: rails.flatMap((rail) => railPieces(unit, fabric, rail)),
    fittingTopZMm: unit.topZMm,
    railTopZMm: unit.topZMm - dimensions.proudOfRoofMm,
  };
}

/** The body of the fitting whose aperture is at a local place: its outer faces lie in the container's outline. */
export function fittingOutline(unit: Unit, localXMm: number, localYMm: number): PlanRect {
  const { lengthMm, widthMm, fitting, holeSpacingLengthwiseMm } = unit.dimensions;
  const inset = (lengthMm - holeSpacingLengthwiseMm) / 2;
  const outerX = Math.abs(localXMm) + inset;
  const outerY = widthMm / 2;
  const [x0, x1] = localXMm < 0 ? [-outerX, -outerX + fitting.lengthMm] : [outerX - fitting.lengthMm, outerX];
  const [y0, y1] = localYMm < 0 ? [-outerY, -outerY + fitting.widthMm] : [outerY - fitting.widthMm, outerY];
  return planRect(unit.frame, x0, x1, y0, y1);
}

const rails: readonly Rail[] = ["left", "right", "front", "door"];

function railPieces(unit: Unit, fabric: Fabric, rail: Rail): TopRailPiece[] {
  const { lengthMm, widthMm, fitting } = unit.dimensions;
  const isSide = rail === "left" || rail === "right";
  const first = isSide ? fitting.lengthMm : fitting.widthMm;
  const last = (isSide ? lengthMm : widthMm) - first;
  return fabric.topRails[rail]
    .map(({ u0, u1 }) => ({ u0: Math.max(u0, first), u1: Math.min(u1, last) }))
    .filter(({ u0, u1 }) => u1 > u0)
    .map(({ u0, u1 }) => ({ rail, u0, u1, outline: railOutline(unit, rail, u0, u1) }));
}

/** A stretch of a top rail or header in plan, u in mm along it. */
export function railOutline({ dimensions, frame }: Unit, rail: Rail, u0: number, u1: number): PlanRect {
  const x = dimensions.lengthMm / 2;
  const y = dimensions.widthMm / 2;
  const roof = dimensions.sheetZone("roof");
  switch (rail) {
    case "left":
      return planRect(frame, u0 - x, u1 - x, roof.v1 - y, y);
    case "right":
      return planRect(frame, u0 - x, u1 - x, -y, roof.v0 - y);
    case "front":
      return planRect(frame, -x, roof.u0 - x, u0 - y, u1 - y);
    case "door":
      return planRect(frame, roof.u1 - x, x, u0 - y, u1 - y);
  }
}
