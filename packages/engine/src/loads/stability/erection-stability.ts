import type { Scheme } from "@cornerway/schema";
import type { ActionCase } from "../action-case.ts";
import { buildingFrame, type BuildingFrame } from "../building-frame.ts";
import { deadCase } from "../dead-cases.ts";
import type { LoadCombination } from "../load-combination.ts";
import { bareStability, type StabilityFinding } from "./bare-stability.ts";

/** One state of the erection: the units that stand, and what could become of them. */
export type ErectionStage = {
  readonly number: number;
  readonly unitIds: readonly string[];
  readonly findings: readonly StabilityFinding[];
};

/**
 * Every state between setting units: those set so far stand bare on bearings and friction in the wind. `order` names
 * the units set in each step; `windsOn` gives the wind cases of a building that consists of the units set so far. Steel
 * erected apart is not part of it.
 */
export function erectionStability(
  scheme: Scheme,
  order: readonly (readonly string[])[],
  windsOn: (scheme: Scheme, building: BuildingFrame) => readonly ActionCase[],
  combinations: readonly LoadCombination[],
): ErectionStage[] {
  return order.map((_, at) => {
    const unitIds = order.slice(0, at + 1).flat();
    const standing = schemeOf(scheme, unitIds);
    const building = buildingFrame(standing);
    if (building === undefined) throw new RangeError(`stage ${at + 1} sets no unit of the scheme`);
    const dead = deadCase(standing, "bare");
    const findings = bareStability(building, dead, windsOn(standing, building), combinations, scheme.basis.friction);
    return { number: at + 1, unitIds, findings };
  });
}

const schemeOf = (scheme: Scheme, unitIds: readonly string[]): Scheme => ({
  ...scheme,
  containers: scheme.containers.filter(({ id }) => unitIds.includes(id)),
  openings: scheme.openings.filter(({ containerId }) => unitIds.includes(containerId)),
  loads: scheme.loads.filter(({ containerId }) => unitIds.includes(containerId)),
  freeLoads: scheme.freeLoads.filter(({ containerId }) => unitIds.includes(containerId)),
});
