import type { FittingName } from "@cornerway/schema";
import type { Contact } from "../bearing/contact.ts";
import { jointTolerances } from "../catalog/joint-tolerances.ts";
import type { Analysis } from "../load-path/analysis.ts";
import type { UnitRun } from "../load-path/run-down.ts";

/** Who stands on whom, and who is borne on fittings all the way down. */
export type Standing = {
  readonly run: (unitId: string) => UnitRun | undefined;
  /** Every unit that stands on this one, directly, on another, on posts or on beams, by id. */
  readonly unitsAbove: (unitId: string) => string[];
  /** Its own four corners bear fitting on fitting with a stock lock, or on pads. */
  readonly onCorners: (unitId: string) => boolean;
  /** Its corners bear so all the way to the ground, through posts that are whole; what else bears a unit below is no matter. */
  readonly onCornersToGround: (unitId: string) => boolean;
};

export function standingOf(analysis: Analysis): Standing {
  const runs = new Map(analysis.run.units.map((run) => [run.unitId, run]));
  const loaders = loadersOf(analysis);
  const settled = new Map<string, boolean>();
  const cornersBear = (unitId: string) => {
    const run = runs.get(unitId);
    return (
      run !== undefined && run.stand.state === "stands" && cornersOf(run).length === 4 && cornersOf(run).every(isPlain)
    );
  };
  const onCorners = (unitId: string) => cornersBear(unitId) && runs.get(unitId)?.contacts.every(isPlain) === true;
  const leadsDown = (unitId: string): boolean => {
    const known = settled.get(unitId);
    if (known !== undefined) return known;
    settled.set(unitId, false);
    const below = runs.get(unitId)?.contacts ?? [];
    const leads =
      cornersBear(unitId) &&
      isWhole(analysis, unitId) &&
      below.every(({ target }) => target.on !== "fitting" || leadsDown(target.elementId));
    settled.set(unitId, leads);
    return leads;
  };
  return {
    run: (unitId) => runs.get(unitId),
    unitsAbove: (unitId) => reached(loaders, unitId).filter((id) => runs.has(id)),
    onCorners,
    onCornersToGround: leadsDown,
  };
}

const corners: readonly FittingName[] = ["front-right", "front-left", "door-right", "door-left"];

const cornersOf = ({ contacts }: UnitRun): Contact[] =>
  contacts.filter(({ fitting }) => fitting !== undefined && corners.includes(fitting));

const isPlain = ({ fitting, target, joint, gapMm }: Contact): boolean =>
  fitting !== undefined &&
  gapMm <= jointTolerances.contactGap.value &&
  (target.on === "pad" || (target.on === "fitting" && joint.joint === "lock"));

const isWhole = ({ structure }: Analysis, unitId: string): boolean =>
  structure.fabric(unitId).cuts.every(({ members, offFace }) => members.length === 0 && !offFace);

/** Units, posts and beams by what they stand on. */
function loadersOf({ bearings, footings, beamSupports }: Analysis): Map<string, string[]> {
  const loaders = new Map<string, string[]>();
  const add = (below: string, above: string) => {
    const list = loaders.get(below) ?? [];
    if (!list.includes(above)) loaders.set(below, [...list, above]);
  };
  for (const { unitId, contacts } of bearings)
    for (const { target } of contacts) if (target.on !== "ground") add(target.elementId, unitId);
  for (const [postId, footing] of footings) if ("elementId" in footing) add(footing.elementId, postId);
  for (const [beamId, supports] of beamSupports) for (const { target } of supports) add(target.elementId, beamId);
  return loaders;
}

function reached(loaders: ReadonlyMap<string, readonly string[]>, unitId: string): string[] {
  const found: string[] = [];
  const next = [unitId];
  for (const id of next)
    for (const above of loaders.get(id) ?? [])
      if (!found.includes(above)) {
        found.push(above);
        next.push(above);
      }
  return found.toSorted();
}
