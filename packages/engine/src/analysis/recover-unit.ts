import { memberEndForces, toLocalComponents } from "../elements/member.ts";
import { panelFlow } from "../elements/shear-panel.ts";
import type { Triple } from "../model/analytical-model.ts";
import type { LocalUnitLoads } from "./unit-loads.ts";
import type { CondensedUnit } from "./building-system.ts";
import { recoverPart } from "./condense.ts";
import { turnVector, turnVectorBack } from "./turn-stiffness.ts";

/** What happens inside one container under one combination; names are the container's own, units N, mm, radians. */
export interface UnitSolution {
  /** Global axes. */
  readonly displacements: Readonly<Record<string, readonly number[]>>;
  /** Twelve forces on the member at end i then end j, local axes. */
  readonly memberEndForces: Readonly<Record<string, readonly number[]>>;
  /** Shear flow, N/mm. */
  readonly panelFlows: Readonly<Record<string, number>>;
}

/** Recovers the inside of a container from the movement of the building's nodes. */
export function recoverUnit(
  { unit, turn, firstNode, condensed, loads }: CondensedUnit,
  combo: Readonly<Record<string, number>>,
  movement: Float64Array,
): UnitSolution {
  const { frame } = condensed.part;
  const end = firstNode + condensed.retained.length;
  const onRetained = turnVectorBack(movement.subarray(firstNode * 6, end * 6), turn);
  const inside = recoverPart(condensed, combined(loads, combo), 0, onRetained);
  const q = uniformLoads(unit.loads, combo);
  const global = turnVector(inside, turn);
  return {
    displacements: Object.fromEntries(frame.nodeIds.map((id, n) => [id, [...global.subarray(n * 6, n * 6 + 6)]])),
    memberEndForces: Object.fromEntries(
      [...frame.members].map(([id, m]) => [
        id,
        [...memberEndForces(m, inside, toLocalComponents(m.facts.axes, q.get(id) ?? [0, 0, 0]))],
      ]),
    ),
    panelFlows: Object.fromEntries([...frame.panels].map(([id, panel]) => [id, panelFlow(panel, inside)])),
  };
}

/** The reduced loads of a combination are the combination of the reduced loads. */
function combined({ cases, condensed }: LocalUnitLoads, combo: Readonly<Record<string, number>>) {
  const count = cases.length;
  const equations = count > 0 ? condensed.reduced.length / count : 0;
  // a combination takes a few of hundreds of cases
  const acting = cases.map((name, c) => ({ c, factor: combo[name] ?? 0 })).filter(({ factor }) => factor !== 0);
  const reduced = new Float64Array(equations);
  for (const { c, factor } of acting)
    for (let e = 0; e < equations; e++)
      reduced[e] = (reduced[e] ?? 0) + factor * (condensed.reduced[e * count + c] ?? 0);
  return { reduced, onRetained: [new Float64Array()] };
}

function uniformLoads(
  loads: CondensedUnit["unit"]["loads"],
  combo: Readonly<Record<string, number>>,
): Map<string, Triple> {
  const sum = new Map<string, Triple>();
  for (const [name, { beam_udl = [] }] of Object.entries(loads)) {
    const factor = combo[name] ?? 0;
    if (factor === 0) continue;
    for (const { beam, q } of beam_udl) {
      const [x, y, z] = sum.get(beam) ?? [0, 0, 0];
      sum.set(beam, [x + factor * q[0], y + factor * q[1], z + factor * q[2]]);
    }
  }
  return sum;
}
