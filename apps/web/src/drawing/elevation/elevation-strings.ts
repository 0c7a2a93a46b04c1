import { openingPlaces, type ElevationModel } from "@cornerway/engine";
import type { UnitSystem } from "@cornerway/schema";
import { dimensionString, stacked, stringStepPx, together, type DimensionStrings } from "../dimension/strings.ts";
import { xToPx, yToPx } from "../paper-to-px.ts";
import type { ViewTransform } from "../view-transform.ts";

/** Px from the ground line down to the nearest string, and from the building right to the heights. */
export const stringsFromPx = { ground: 44, right: 44 } as const;

/**
 * Strings of an elevation: under the ground the openings of one storey from fitting to fitting, then the bays of the grid,
 * then the whole; at the right the heights of the storeys.
 */
export function elevationStrings(
  model: ElevationModel,
  view: ViewTransform,
  units: UnitSystem,
  storey?: number,
): DimensionStrings {
  const { extent } = model;
  if (extent === null) return { lines: [], labels: [] };
  const level = (key: string, placesMm: readonly number[]) => (atPx: number) =>
    dimensionString(placesMm, { key, atPx, toPx: (atMm) => xToPx(view, atMm), units });
  const bays = model.grid.map(({ atMm }) => atMm);
  const whole = bays.length > 2 ? [bays[0] ?? 0, bays.at(-1) ?? 0] : [];
  const ground = yToPx(view, model.groundMm) + stringsFromPx.ground;
  const under = stacked(
    [level("opening", openingPlacesOf(model, storey)), level("bay", bays), level("overall", whole)],
    ground,
    stringStepPx,
  );
  const heights = dimensionString(
    model.levels.map(({ zMm }) => zMm),
    {
      ...{ key: "height", upright: true, units, toPx: (atMm: number) => yToPx(view, atMm) },
      atPx: xToPx(view, extent.u1Mm) + stringsFromPx.right,
    },
  );
  return together([under, heights]);
}

/** The openings of the storey chosen, of the lowest that has any where none is. */
function openingPlacesOf({ faces, levels }: ElevationModel, storey: number | undefined): readonly number[] {
  const floors = levels.filter((level) => level.storey !== null && (storey === undefined || level.storey === storey));
  const found = floors.map(({ zMm }) => {
    const next = Math.min(...levels.map((level) => level.zMm).filter((other) => other > zMm));
    return openingPlaces(faces.filter(({ z0Mm }) => z0Mm > zMm - 1 && z0Mm < next - 1));
  });
  return found.find((places) => places.length > 0) ?? [];
}
