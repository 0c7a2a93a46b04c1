import type { Scheme } from "@cornerway/schema";
import { placeContainer } from "../geometry/place.ts";
import { storeysOf } from "../geometry/storeys.ts";
import { evenPatch, type ActionCase, type ActionLoad } from "./action-case.ts";
import type { DesignBasis } from "./design-basis.ts";
import { floorRegions, type FloorRegion } from "./floor-regions.ts";
import { imposedWorking } from "./imposed-working.ts";
import type { LoadingInputs } from "./loading-inputs.ts";

/** Where a unit bears along its length, mm from its front end; a unit that is not named bears at its ends. */
export type BearingLines = ReadonlyMap<string, readonly number[]>;

/**
 * Imposed load of the floors in patterns: everywhere; every second unit of each storey, and the others; each unit
 * alone; and where units hang over, the overhangs alone and the spans alone. Nowhere needs no case: combinations may
 * leave L out. Patterns that load the same places stand once, in this order.
 */
export function imposedCases(
  scheme: Scheme,
  inputs: LoadingInputs,
  basis: DesignBasis,
  bearings: BearingLines,
): ActionCase[] {
  const regions = loadedRegions(scheme, inputs, basis, bearings);
  const parity = parities(scheme);
  const patterns: readonly (readonly [string, (region: LoadedRegion) => boolean])[] = [
    ["L everywhere", () => true],
    ["L every other unit", ({ containerId }) => parity.get(containerId) === 0],
    ["L the other units", ({ containerId }) => parity.get(containerId) === 1],
    ["L overhangs", ({ name }) => name !== "span"],
    ["L spans", ({ name }) => name === "span"],
    ...scheme.containers.map(
      ({ id }) => [`L unit ${id}`, ({ containerId }: LoadedRegion) => containerId === id] as const,
    ),
    ...scheme.containers.map(
      ({ id }) =>
        [`L overhang ${id}`, ({ containerId, name }: LoadedRegion) => containerId === id && name !== "span"] as const,
    ),
  ];
  return distinct(patterns.map(([id, takes]) => ({ id, regions: regions.filter(takes) }))).map(
    ({ id, regions: loaded }) => ({
      id,
      symbol: "L",
      loads: loaded.map(loadOf),
    }),
  );
}

type LoadedRegion = FloorRegion & { readonly containerId: string; readonly pressurePa: number };
type Pattern = { readonly id: string; readonly regions: readonly LoadedRegion[] };

const loadOf = ({ containerId, rect, pressurePa }: LoadedRegion): ActionLoad => ({
  kind: "on",
  containerId,
  surface: "floor",
  patch: evenPatch(rect, pressurePa),
});

function loadedRegions(
  scheme: Scheme,
  inputs: LoadingInputs,
  basis: DesignBasis,
  bearings: BearingLines,
): LoadedRegion[] {
  return scheme.containers.flatMap((container) => {
    const pressurePa = imposedWorking(scheme, inputs, basis, container).result.value;
    if (pressurePa === 0) return [];
    const placed = placeContainer(container);
    return floorRegions(placed, bearings.get(container.id) ?? []).map((region) => ({
      ...region,
      containerId: container.id,
      pressurePa,
    }));
  });
}

/** 0 or 1 by the unit's place in its storey, from west to east and south to north, shifted from storey to storey. */
function parities(scheme: Scheme): Map<string, number> {
  const places = new Map(scheme.containers.map(({ id, xUm, yUm }) => [id, { xUm, yUm }]));
  const at = (id: string) => places.get(id) ?? { xUm: 0, yUm: 0 };
  return new Map(
    storeysOf(scheme).flatMap(({ index, containerIds }) =>
      containerIds
        .toSorted((a, b) => at(a).xUm - at(b).xUm || at(a).yUm - at(b).yUm || (a < b ? -1 : 1))
        .map((id, place): [string, number] => [id, (place + index) % 2]),
    ),
  );
}

function distinct(patterns: readonly Pattern[]): Pattern[] {
  const seen = new Set<string>();
  return patterns.filter(({ regions }) => {
    const key = regions.map(({ containerId, name }) => `${containerId} ${name}`).join("; ");
    if (key === "" || seen.has(key)) return false;
    seen.add(key);
    return true;
  });
}
