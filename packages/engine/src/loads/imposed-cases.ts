import type { Scheme } from "@cornerway/schema";
import { placeContainer } from "../geometry/place.ts";
import { storeysOf } from "../geometry/storeys.ts";
import { LastMade } from "../numerics/last-made.ts";
import { toMm } from "../units.ts";
import { evenPatch, type ActionCase, type ActionLoad } from "./action-case.ts";
import type { DesignBasis } from "./design-basis.ts";
import { freeLoadOn } from "./free-loads.ts";
import { floorRegions, type FloorRegion } from "./floor-regions.ts";
import { imposedWorking } from "./imposed-working.ts";

/** Where a unit bears along its length, mm from its front end; a unit that is not named bears at its ends. */
export type BearingLines = ReadonlyMap<string, readonly number[]>;

/** The pattern of imposed load with every floor loaded. */
export const imposedEverywhere = "L everywhere";

/**
 * Imposed load of the floors in patterns: everywhere; every second unit of each storey, and the others; each unit
 * alone; and where units hang over, the overhangs alone and the spans alone. Nowhere needs no case: combinations may
 * leave L out. Patterns that load the same places stand once, in this order.
 */
export function imposedCases(scheme: Scheme, basis: DesignBasis, bearings: BearingLines): readonly ActionCase[] {
  const { containers, loads, uses, freeLoads } = scheme;
  const besides = [basis, loads, uses, freeLoads, JSON.stringify([...bearings])];
  return last.take(containers, besides, () => casesOf(scheme, basis, bearings));
}

const last = new LastMade<readonly ActionCase[]>();

function casesOf(scheme: Scheme, basis: DesignBasis, bearings: BearingLines): ActionCase[] {
  const regions = loadedRegions(scheme, basis, bearings);
  const parity = parities(scheme);
  const patterns: readonly (readonly [string, (region: LoadedRegion) => boolean])[] = [
    [imposedEverywhere, () => true],
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
      loads: loaded.flatMap(({ loads }) => loads),
    }),
  );
}

type LoadedRegion = FloorRegion & { readonly containerId: string; readonly loads: readonly ActionLoad[] };
type Pattern = { readonly id: string; readonly regions: readonly LoadedRegion[] };

function loadedRegions(scheme: Scheme, basis: DesignBasis, bearings: BearingLines): LoadedRegion[] {
  return scheme.containers.flatMap((container) => {
    const pressurePa = imposedWorking(scheme, basis, container).result.value;
    const placed = placeContainer(container);
    return floorRegions(placed, bearings.get(container.id) ?? [])
      .map((region) => ({
        ...region,
        containerId: container.id,
        loads: [...spread(container.id, region, pressurePa), ...putOn(scheme, container.id, region)],
      }))
      .filter(({ loads }) => loads.length > 0);
  });
}

const spread = (containerId: string, { rect }: FloorRegion, pressurePa: number): ActionLoad[] =>
  pressurePa === 0 ? [] : [{ kind: "on", containerId, surface: "floor", patch: evenPatch(rect, pressurePa) }];

/** Imposed loads someone put on this part of the floor: they come and go with it. */
const putOn = (scheme: Scheme, containerId: string, { rect }: FloorRegion): ActionLoad[] =>
  scheme.freeLoads
    .filter((load) => load.case === "imposed" && load.surface === "floor" && load.containerId === containerId)
    .filter(({ xUm }) => toMm(xUm) >= rect.u0 && toMm(xUm) < rect.u1)
    .flatMap((load) => freeLoadOn(scheme, load));

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
