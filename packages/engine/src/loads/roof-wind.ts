import type { ActionLoad } from "./action-case.ts";
import type { BoxMm, BuildingFrame } from "./building-frame.ts";
import type { ExposedFace } from "./exposed-faces.ts";
import { even } from "./face-patch.ts";
import { normalLoad } from "./normal-load.ts";
import { cutAlong, type Rect } from "./uncovered.ts";
import { pressuresOf } from "./wall-wind.ts";
import type { DirectionalPressures, MainSystemWind, RoofBand, WindLoadCase } from "./wind-pressures.ts";
import type { WindDirection } from "./wind-shape.ts";

/**
 * Wind on part of a roof or of an open underside. Roof bands run from the windward edge of the enclosing box, on lower
 * roofs too. With wind along both axes the stronger of the two values counts. Undersides take the windward pressure,
 * up, whatever the wind's direction.
 */
export function roofWind(
  building: BuildingFrame,
  wind: MainSystemWind,
  { x, y }: WindLoadCase,
  outwardPa: number,
  strongest: boolean,
  part: ExposedFace,
): ActionLoad[] {
  const winds = [x, y].flatMap((one) =>
    one === undefined ? [] : [{ ...one, pressures: pressuresOf(wind, one.direction) }],
  );
  if (part.side === "down") {
    const soffitPa = Math.max(...winds.map(({ factor, pressures }) => factor * pressures.soffitPa));
    return [normalLoad(building.axes, part, part.rect, even(soffitPa))];
  }
  const us = winds.flatMap(({ direction, pressures }) =>
    alongX(direction) ? edgesOf(building.outline, pressures) : [],
  );
  const vs = winds.flatMap(({ direction, pressures }) =>
    alongX(direction) ? [] : edgesOf(building.outline, pressures),
  );
  const roof = cutAlong(part.rect, us, vs).map((rect) => {
    const values = winds.map(({ factor, pressures }) => {
      const band = bandAt(building.outline, pressures, rect);
      return factor * (strongest ? band.mostPa : band.leastPa);
    });
    return normalLoad(
      building.axes,
      part,
      rect,
      even((strongest ? Math.min(...values) : Math.max(...values)) - outwardPa),
    );
  });
  return [...roof, onFloorBelow(building, part, outwardPa)];
}

/** What lifts the roof from inside presses on the floor of the same unit: a closed box does not lift itself. */
const onFloorBelow = ({ axes }: BuildingFrame, part: ExposedFace, outwardPa: number): ActionLoad =>
  normalLoad(axes, { ...part, side: "down", face: "floor", atMm: part.unit.z0 }, part.rect, even(-outwardPa));

const alongX = (direction: WindDirection): boolean => direction === "+x" || direction === "-x";

/** Places of the bands' edges on the axis of the wind. */
const edgesOf = (outline: BoxMm, { direction, roof }: DirectionalPressures): number[] =>
  roof.map(({ toMm }) => fromWindwardEdge(outline, direction, toMm));

function fromWindwardEdge(outline: BoxMm, direction: WindDirection, distanceMm: number): number {
  switch (direction) {
    case "+x":
      return outline.x0 + distanceMm;
    case "-x":
      return outline.x1 - distanceMm;
    case "+y":
      return outline.y0 + distanceMm;
    case "-y":
      return outline.y1 - distanceMm;
  }
}

function bandAt(outline: BoxMm, { direction, roof }: DirectionalPressures, rect: Rect): RoofBand {
  const middle = alongX(direction) ? (rect.u0 + rect.u1) / 2 : (rect.v0 + rect.v1) / 2;
  const distance = Math.abs(middle - fromWindwardEdge(outline, direction, 0));
  const band = roof.find(({ toMm }) => distance <= toMm) ?? roof.at(-1);
  if (band === undefined) throw new RangeError("a roof has bands");
  return band;
}
