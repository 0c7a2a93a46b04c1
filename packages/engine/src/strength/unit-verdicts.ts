import type { Scheme } from "@cornerway/schema";
import type { BuiltModel } from "../model/build-model.ts";
import { modelReasons } from "./building-reasons.ts";
import type { ElementResult } from "./element-result.ts";
import type { HoldNeeded } from "./holds-needed.ts";
import type { LateralGap } from "./lateral/lateral-gaps.ts";
import type { ModelledBearing } from "./modelled-bearings.ts";
import type { RefusedRun } from "./solve-runs.ts";
import type { StrengthReason } from "./strength-reason.ts";
import { unitStrength, type UnitStrength } from "./unit-strength.ts";

/** All that was found of a building. */
export type BuildingFindings = {
  readonly scheme: Scheme;
  readonly built: BuiltModel;
  readonly bearings: readonly ModelledBearing[];
  readonly results: readonly ElementResult[];
  readonly holds: readonly HoldNeeded[];
  readonly refused: readonly RefusedRun[];
  readonly runs: number;
  readonly gaps: readonly LateralGap[];
};

/** A verdict for each unit, from its own parts, the posts and pads it stands on and the ties that join it; units below have their own. */
export function unitVerdicts(found: BuildingFindings, ofBuilding: readonly StrengthReason[]): UnitStrength[] {
  const { scheme, built, bearings, results, holds, refused, runs, gaps } = found;
  return scheme.containers.map(({ id }) => {
    const owners = standsOn(id, bearings);
    for (const tieId of tiesOf(id, built)) owners.add(tieId);
    return unitStrength({
      unitId: id,
      results: results.filter(({ ownerId }) => owners.has(ownerId)),
      holds: holds.filter(({ ownerId }) => owners.has(ownerId)),
      refused,
      runs,
      withSteel:
        hasSteel(scheme, id) ||
        built.plan.inWalls.has(id) ||
        [...built.plan.freePosts, ...built.plan.beams].some((added) => owners.has(added)),
      given: [...ofBuilding, ...modelReasons(id, built.notes, scheme), ...gapReasons(id, gaps)],
    });
  });
}

const gapReasons = (unitId: string, gaps: readonly LateralGap[]): StrengthReason[] =>
  gaps.filter((gap) => gap.unitId === unitId).map((gap) => ({ kind: "no lateral wall", gap }));

/** The unit, the posts by themselves and the beams under it, and the pads under all of them. */
function standsOn(unitId: string, bearings: readonly ModelledBearing[]): Set<string> {
  const owners = new Set([unitId]);
  for (let known = 0; known < owners.size;) {
    known = owners.size;
    for (const { ownerId, planned } of bearings) {
      if (!owners.has(ownerId)) continue;
      if ("ground" in planned.below) owners.add(planned.below.ground);
      if ("post" in planned.below) owners.add(planned.below.post);
      if ("beam" in planned.below) owners.add(planned.below.beam);
    }
  }
  return owners;
}

/** What joins the unit to its neighbours. */
const tiesOf = (unitId: string, { plan }: BuiltModel): string[] =>
  plan.ties.flatMap(({ tieId, ends }) => (ends.some((end) => end.unitId === unitId) ? [tieId] : []));

const hasSteel = ({ openings }: Scheme, unitId: string): boolean =>
  openings.some(({ containerId, framed }) => containerId === unitId && framed);
