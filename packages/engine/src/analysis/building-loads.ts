import { turned } from "../model/turn.ts";
import { plus, times } from "../numerics/vector.ts";
import type { BuildingSystem, CondensedUnit } from "./building-system.ts";
import { combinedLoads, type CombinedLoads } from "./combined-loads.ts";
import type { Action } from "./equilibrium.ts";
import { sharesUnder } from "./load-basis.ts";
import { addTurned } from "./turn-stiffness.ts";

/** One combination on the whole building: what acts between the containers, and what the containers pass on. */
export function buildingLoads(
  { frame, skeleton, units }: BuildingSystem,
  combo: Readonly<Record<string, number>>,
): CombinedLoads {
  const known = Object.fromEntries(Object.entries(combo).filter(([name]) => Object.hasOwn(skeleton.cases, name)));
  const between = combinedLoads(frame, skeleton, known);
  const forces = between.forces.slice();
  const actions = [...between.actions];
  for (const unit of units) addUnit(unit, combo, forces, actions);
  return { ...between, forces, actions };
}

function addUnit(
  { firstNode, turn, unit, loads: own }: CondensedUnit,
  combo: Readonly<Record<string, number>>,
  forces: Float64Array,
  actions: Action[],
): void {
  sharesUnder(own.basis, combo).forEach((share, k) => {
    if (share === 0) return;
    addTurned(own.condensed.onRetained[k] ?? NOTHING, turn, share, forces, firstNode * 6);
    const local = own.resultants[k];
    if (local === undefined) return;
    actions.push({
      place: plus(turned(turn, local.place), unit.at),
      force: times(turned(turn, local.force), share),
      moment: times(turned(turn, local.moment), share),
    });
  });
}

const NOTHING = new Float64Array(0);
