import type { ActionLoad } from "./action-case.ts";
import type { BuildingFrame } from "./building-frame.ts";
import type { ExposedFace } from "./exposed-faces.ts";
import type { PlanePressure } from "./face-patch.ts";
import { normalLoad } from "./normal-load.ts";
import { cutAlong, type Rect } from "./uncovered.ts";
import type { BoxFactors } from "./box-factors.ts";
import type { DirectionalPressures, MainSystemWind, WindLoadCase } from "./wind-pressures.ts";
import { windwardSideOf } from "./windward-side.ts";
import type { WindDirection } from "./wind-shape.ts";

/**
 * External and internal pressure on part of a wall, windward walls band by band. `outwardPa` is what pushes from
 * inside.
 */
export function wallWind(
  building: BuildingFrame,
  wind: MainSystemWind,
  loadCase: WindLoadCase,
  factors: BoxFactors,
  outwardPa: number,
  part: ExposedFace,
  side: WindDirection,
): ActionLoad[] {
  const own = side === "+x" || side === "-x" ? loadCase.x : loadCase.y;
  const other = side === "+x" || side === "-x" ? loadCase.y : loadCase.x;
  if (own === undefined) {
    const sidePa = other === undefined ? 0 : other.factor * pressuresOf(wind, other.direction).sidePa;
    return [normalLoad(building.axes, part, part.rect, { pressurePa: sidePa - outwardPa, ...level })];
  }
  const pressures = pressuresOf(wind, own.direction);
  const bands =
    windwardSideOf[own.direction] === side
      ? windwardPieces(building, pressures, part.rect)
      : [{ rect: part.rect, pa: pressures.leewardPa }];
  const factor = own.factor * factors[own.direction];
  return bands.map(({ rect, pa }) => {
    const turned = turning(building, own.direction, own.eccentricity, rect);
    return normalLoad(building.axes, part, rect, {
      pressurePa: pa * factor * turned.atStart - outwardPa,
      alongUPaPerMm: pa * factor * turned.perMm,
      alongVPaPerMm: 0,
    });
  });
}

const level: Omit<PlanePressure, "pressurePa"> = { alongUPaPerMm: 0, alongVPaPerMm: 0 };

export function pressuresOf(wind: MainSystemWind, direction: WindDirection): DirectionalPressures {
  const found = wind.directions.find((one) => one.direction === direction);
  if (found === undefined) throw new RangeError(`no pressures for wind ${direction}`);
  return found;
}

function windwardPieces({ groundZMm }: BuildingFrame, { windward }: DirectionalPressures, rect: Rect) {
  const edges = windward.map(({ toMm }) => groundZMm + toMm);
  return cutAlong(rect, [], edges).map((piece) => {
    const middle = (piece.v0 + piece.v1) / 2 - groundZMm;
    const band = windward.find(({ toMm }) => middle <= toMm) ?? windward.at(-1);
    return { rect: piece, pa: band?.pressurePa ?? 0 };
  });
}

/**
 * The code's torsion as pressure that grows across the face: with 12·e/B per unit of width about the middle, the force
 * stays and stands e·B off it. Anticlockwise is positive: wind +x then weighs more at small y, wind +y at large x.
 */
function turning({ outline }: BuildingFrame, direction: WindDirection, eccentricity: number, rect: Rect) {
  const [low, high] = direction === "+x" || direction === "-x" ? [outline.y0, outline.y1] : [outline.x0, outline.x1];
  const sense = direction === "+y" || direction === "-x" ? 1 : -1;
  const perMm = (sense * 12 * eccentricity) / (high - low);
  return { atStart: 1 + perMm * (rect.u0 - (low + high) / 2), perMm };
}
