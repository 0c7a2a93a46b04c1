import { turned } from "../model/turn.ts";
import { plus, times } from "../numerics/vector.ts";
import type { BuildingSystem, CondensedUnit } from "./building-system.ts";
import { combinedLoads, type CombinedLoads } from "./combined-loads.ts";
import type { Action } from "./equilibrium.ts";
import { sharesUnder } from "./load-basis.ts";
import { addTurned } from "./turn-stiffness.ts";

/** One combination on the whole building: what acts between the containers, and what the containers pass on. */
export function buildingLoads({ frame, skeleton, units }: BuildingSystem, combo: Combo): CombinedLoads {
  const known = Object.fromEntries(Object.entries(combo).filter(([name]) => Object.hasOwn(skeleton.cases, name)));
  const between = combinedLoads(frame, skeleton, known);
  const forces = between.forces.slice();
  for (const unit of units) addUnit(unit, combo, forces);
  const { settlement, onMembers, unresisted } = between;
  return {
    forces,
    settlement,
    onMembers,
    unresisted,
    get actions() {
      return [...between.actions, ...units.flatMap((unit) => actionsOf(unit, combo))];
    },
  };
}

function addUnit(
  { firstNode, condensed: { freedoms }, turn, loads }: CondensedUnit,
  combo: Combo,
  forces: Float64Array,
): void {
  const shares = sharesUnder(loads.basis, combo);
  for (let k = 0; k < shares.length; k++) {
    const share = shares[k] ?? 0;
    if (share !== 0) addTurned(loads.condensed.onRetained[k] ?? NOTHING, freedoms, turn, share, forces, firstNode * 6);
  }
}

/** Its loads themselves; asked for where equilibrium is shown. */
function actionsOf({ turn, unit, loads: { basis, resultants } }: CondensedUnit, combo: Combo): Action[] {
  const shares = sharesUnder(basis, combo);
  return resultants.flatMap((local, k): Action[] => {
    const share = shares[k] ?? 0;
    if (share === 0) return [];
    return [
      {
        place: plus(turned(turn, local.place), unit.at),
        force: times(turned(turn, local.force), share),
        moment: times(turned(turn, local.moment), share),
      },
    ];
  });
}

type Combo = Readonly<Record<string, number>>;

const NOTHING = new Float64Array(0);
