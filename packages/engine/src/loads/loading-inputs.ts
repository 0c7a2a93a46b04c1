import type { PointMm } from "@cornerway/schema";
import type { CatalogValue } from "../catalog/catalog-value.ts";
import type { Occupancy } from "./occupancy.ts";
import type { SeismicSystem } from "./seismic-system.ts";
import type { Axis } from "./wind-shape.ts";

/** What a project says of its loads beyond the scheme's own floor loads. */
export type LoadingInputs = {
  readonly uses: readonly FloorUse[];
  readonly plant: readonly PlantItem[];
  readonly addedSteel: readonly AddedSteel[];
  readonly plates: readonly PlateTare[];
  /** Per axis of the building, what resists earthquakes. */
  readonly systems: Readonly<Record<Axis, SeismicSystem>>;
  readonly values: ProjectValues;
};

export type FloorUse = {
  readonly containerId: string;
  readonly surface: "floor" | "roof";
  readonly occupancy: Occupancy;
};

/** A machine, tank or array standing on a floor or roof, where its feet stand. */
export type PlantItem = {
  readonly id: string;
  readonly containerId: string;
  readonly weightN: number;
  readonly at: PointMm;
};

/** The tare on a container's plate; it takes the place of the type's range. */
export type PlateTare = { readonly containerId: string; readonly tareKg: number };

/** Steel added to a unit: posts, beams, frames, at their centre of mass. */
export type AddedSteel = {
  readonly elementId: string;
  /** The unit it travels with when lifted; absent for steel erected apart. */
  readonly containerId?: string;
  readonly weightN: number;
  readonly at: PointMm;
};

/** Numbers a project may set. */
export type ProjectValues = {
  readonly levelErrorMm: number;
  readonly settlementMm: number;
  readonly liftingFactor: number;
  readonly steelFriction: number;
};

const judged = (value: number, unit: CatalogValue["unit"], source: string) =>
  ({ value, unit, source, certainty: "common practice" }) as const satisfies CatalogValue;

/** Defaults of the numbers a project may set. */
export const projectDefaults = {
  levelErrorMm: judged(5, "mm", "no published source; level of pads, posts and seats as built, either way"),
  settlementMm: judged(10, "mm", "no published source; one support goes down against the others"),
  liftingFactor: judged(2, "ratio", "no published source; dynamic factor on the real weight at the pick"),
  steelFriction: judged(
    0.3,
    "ratio",
    "no published source; steel on steel or on concrete, unpainted faces, lower end of 0.3 to 0.4",
  ),
} as const satisfies Record<keyof ProjectValues, CatalogValue>;

export const defaultProjectValues: ProjectValues = {
  levelErrorMm: projectDefaults.levelErrorMm.value,
  settlementMm: projectDefaults.settlementMm.value,
  liftingFactor: projectDefaults.liftingFactor.value,
  steelFriction: projectDefaults.steelFriction.value,
};
