import type { Scheme } from "@cornerway/schema";
import { containerDimensions } from "../catalog/container-dimensions.ts";
import { gravity } from "../catalog/gravity.ts";
import { toKn, toM2 } from "../units.ts";

/** What one unit weighs and carries, kN, unfactored: tare at the middle of its range with finishes; imposed loads. */
export type UnitWeight = { readonly id: string; readonly weightKn: number; readonly imposedKn: number };

/** Loads of every unit, in the order of the scheme. Floor and roof loads act on the external plan area. */
export function weightsOf(scheme: Scheme): UnitWeight[] {
  const pressures = new Map<string, { finishPa: number; imposedPa: number }>();
  for (const load of scheme.loads) {
    const sum = pressures.get(load.containerId) ?? { finishPa: 0, imposedPa: 0 };
    if (load.case === "finish") sum.finishPa += load.pressurePa;
    else sum.imposedPa += load.pressurePa;
    pressures.set(load.containerId, sum);
  }
  return scheme.containers.map(({ id, type }) => {
    const { lengthMm, widthMm, tareKg } = containerDimensions(type);
    const areaM2 = toM2(lengthMm * widthMm);
    const { finishPa, imposedPa } = pressures.get(id) ?? { finishPa: 0, imposedPa: 0 };
    const tareN = ((tareKg.least + tareKg.most) / 2) * gravity.value;
    return { id, weightKn: toKn(tareN + finishPa * areaM2), imposedKn: toKn(imposedPa * areaM2) };
  });
}
