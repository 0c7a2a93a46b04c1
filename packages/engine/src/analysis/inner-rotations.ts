import { nodeName } from "../model/building-model.ts";
import type { BuildingCombination } from "./building-combination.ts";
import type { BuildingSystem } from "./building-system.ts";
import type { FrameSolution } from "./frame-result.ts";

/**
 * Movements of the nodes between the containers with the rotations of those that nothing outside turns: these are recovered
 * with the inside of their container.
 */
export function withInnerRotations(
  displacements: FrameSolution["displacements"],
  { units }: BuildingSystem,
  inside: BuildingCombination["unit"],
): FrameSolution["displacements"] {
  const all: Record<string, readonly number[]> = { ...displacements };
  for (const { unit } of units) {
    const { retained, momentNodes = [] } = unit.fragment;
    const moved = inside(unit.id).displacements;
    for (const node of retained) {
      if (momentNodes.includes(node)) continue;
      const name = nodeName(unit.id, node);
      all[name] = [...(displacements[name] ?? []).slice(0, 3), ...(moved[node] ?? []).slice(3)];
    }
  }
  return all;
}
