import type { FloorUse, FreeLoad, Scheme } from "@cornerway/schema";
import { containerDimensions } from "../catalog/container-dimensions.ts";
import { gravity } from "../catalog/gravity.ts";
import { toKn, toM2 } from "../units.ts";
import { freeForce } from "./free-force.ts";
import { resultantOf, type PointForce } from "./resultant.ts";

/**
 * What one unit weighs and carries, unfactored. Weight: tare with finishes and plant; imposed: what comes and goes, snow
 * with it. Wind is no part of this. Forces act in the unit's own plan, from its middle, mm.
 */
export type UnitWeight = {
  readonly id: string;
  readonly weightKn: number;
  readonly imposedKn: number;
  readonly weight: readonly PointForce[];
  readonly imposed: readonly PointForce[];
};

/** The imposed load the adopted code gives a use, Pa. */
export type UsePressurePa = (occupancy: FloorUse["occupancy"]) => number;

/**
 * Loads of every unit, in the order of the scheme: its tare as its plate says, else the middle of its type's range; floor and
 * roof loads on the external plan area; free loads where they are drawn. A use counts where no imposed load is drawn on
 * that floor or roof.
 */
export function weightsOf(scheme: Scheme, usePressurePa: UsePressurePa): UnitWeight[] {
  const pressures = pressuresOf(scheme, usePressurePa);
  const free = byUnit(scheme.freeLoads);
  return scheme.containers.map(({ id, type, plateTareKg }) => {
    const { lengthMm, widthMm, tareKg } = containerDimensions(type);
    const areaM2 = toM2(lengthMm * widthMm);
    const { finishPa, imposedPa } = pressures.get(id) ?? { finishPa: 0, imposedPa: 0 };
    const tareN = (plateTareKg ?? (tareKg.least + tareKg.most) / 2) * gravity.value;
    const placed = (free.get(id) ?? []).flatMap((load) => freeForce(load, lengthMm, widthMm) ?? []);
    const even = (forceN: number): PointForce => ({ forceKn: toKn(forceN), xMm: 0, yMm: 0 });
    const weight = [even(tareN + finishPa * areaM2), ...placed.filter(({ stays }) => stays)];
    const imposed = [even(imposedPa * areaM2), ...placed.filter(({ stays }) => !stays)];
    return { id, weightKn: resultantOf(weight).forceKn, imposedKn: resultantOf(imposed).forceKn, weight, imposed };
  });
}

type Pressures = { finishPa: number; imposedPa: number };

function pressuresOf(scheme: Scheme, usePressurePa: UsePressurePa): Map<string, Pressures> {
  const pressures = new Map<string, Pressures>();
  const of = (id: string) => {
    const known = pressures.get(id);
    if (known !== undefined) return known;
    const fresh = { finishPa: 0, imposedPa: 0 };
    pressures.set(id, fresh);
    return fresh;
  };
  const drawn = new Set<string>();
  for (const load of scheme.loads) {
    if (load.case === "finish") of(load.containerId).finishPa += load.pressurePa;
    else {
      of(load.containerId).imposedPa += load.pressurePa;
      drawn.add(`${load.containerId} ${load.surface}`);
    }
  }
  const used = new Set<string>();
  for (const { containerId, surface, occupancy } of scheme.uses) {
    const place = `${containerId} ${surface}`;
    if (drawn.has(place) || used.has(place)) continue;
    used.add(place);
    of(containerId).imposedPa += usePressurePa(occupancy);
  }
  return pressures;
}

function byUnit(loads: readonly FreeLoad[]): Map<string, FreeLoad[]> {
  const lists = new Map<string, FreeLoad[]>();
  for (const load of loads) {
    const list = lists.get(load.containerId);
    if (list === undefined) lists.set(load.containerId, [load]);
    else list.push(load);
  }
  return lists;
}
