import type { Scheme } from "@cornerway/schema";
import type { Building } from "../geometry/building.ts";
import { loadsOnUnits, type UnitLoad } from "../model/loads-on-units.ts";
import type { ActionCase } from "../loads/action-case.ts";
import { deadCase } from "../loads/dead-cases.ts";
import type { BearingPlan } from "../model/bearing-plan.ts";
import { spreadOnRails } from "../strength/spread-on-rails.ts";

/** The loads on one container by case, in the shape the model takes them. */
export type UnitActions = readonly (readonly [string, ReadonlyMap<string, readonly UnitLoad[]>])[];

/**
 * Loads on one container with its openings as tried. Its dead load follows the steel of the frame; all other loads are those of
 * the building as it was solved.
 */
export function unitActions(
  cases: readonly ActionCase[],
  scheme: Scheme,
  unitId: string,
  building: Building,
  plan: BearingPlan,
): UnitActions {
  const dead = new Map(
    (["most", "least"] as const).map((state) => {
      const action = spreadOnRails(deadCase(scheme, state), building);
      return [action.id, action] as const;
    }),
  );
  return cases.map((given) => {
    const action = dead.get(given.id) ?? given;
    return [action.id, new Map([[unitId, loadsOnUnits(action, plan).get(unitId) ?? []]])] as const;
  });
}
