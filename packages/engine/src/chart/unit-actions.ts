import type { Scheme } from "@cornerway/schema";
import type { Building } from "../geometry/building.ts";
import type { ActionCase, ActionLoad } from "../loads/action-case.ts";
import { deadCase } from "../loads/dead-cases.ts";
import type { BearingPlan } from "../model/bearing-plan.ts";
import { spreadOnRails } from "../strength/spread-on-rails.ts";

/** The loads on one container by case, in the shape the model takes them. */
export type UnitActions = readonly (readonly [string, ReadonlyMap<string, readonly ActionLoad[]>])[];

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
  const inWall = new Set(plan.inWalls.get(unitId)?.map(({ postId }) => postId));
  return cases.map((given) => {
    const { id, loads } = dead.get(given.id) ?? given;
    const own = loads.filter((load) => {
      const element = "containerId" in load ? load.containerId : load.elementId;
      return element === unitId || inWall.has(element);
    });
    return [id, new Map([[unitId, own]])] as const;
  });
}
