import { factorOf } from "../loads/load-combination.ts";
import { bearingForce, type ModelledBearing } from "./modelled-bearings.ts";
import type { SolvedRun } from "./solve-runs.ts";

/** What nothing drawn resists, of one unit or post, at strength level, N, with the run that asks most. */
export type HoldNeeded =
  /** Fittings or seats that are pulled and only bear: a hold-down or lock at each would do. */
  | {
      readonly kind: "uplift";
      readonly ownerId: string;
      readonly places: readonly string[];
      /** The greatest pull at one of them. */
      readonly forceN: number;
      readonly run: string;
    }
  /** Pushed sideways beyond friction, or at all in an earthquake: locks or made connections at these would do. */
  | {
      readonly kind: "sliding";
      readonly ownerId: string;
      readonly places: readonly string[];
      readonly forceN: number;
      /** What friction resists; 0 in earthquakes. */
      readonly frictionN: number;
      readonly run: string;
    };

/**
 * What each unit needs to be held by beyond what is drawn. Uplift by runs under any assumption; sliding by runs with locks at
 * play alone, whose level forces are those of the loads and not of bearings that hold each other.
 */
export function holdsNeeded(
  bearings: readonly ModelledBearing[],
  runs: readonly SolvedRun[],
  friction: number,
): HoldNeeded[] {
  const free = new Map<string, ModelledBearing[]>();
  for (const bearing of bearings) {
    if (bearing.planned.heldById !== undefined) continue;
    const list = free.get(bearing.ownerId);
    if (list === undefined) free.set(bearing.ownerId, [bearing]);
    else list.push(bearing);
  }
  const factored = runs.filter(({ run }) => run.level === "strength");
  return [...free].flatMap(([ownerId, own]) => {
    const against = factored.filter(({ run }) => run.owners?.has(ownerId) !== false);
    return [...uplift(ownerId, own, against), ...sliding(ownerId, own, against, friction)];
  });
}

/** Less is rounding. */
const NEWTON = 1;

function uplift(ownerId: string, own: readonly ModelledBearing[], runs: readonly SolvedRun[]): HoldNeeded[] {
  const places = new Set<string>();
  let [forceN, run] = [NEWTON, ""];
  for (const solved of runs)
    for (const bearing of own) {
      const pull = -bearingForce(bearing, solved)[2];
      if (pull <= NEWTON) continue;
      places.add(bearing.place);
      if (pull > forceN) [forceN, run] = [pull, solved.run.id];
    }
  return places.size === 0 ? [] : [{ kind: "uplift", ownerId, places: [...places], forceN, run }];
}

function sliding(
  ownerId: string,
  own: readonly ModelledBearing[],
  runs: readonly SolvedRun[],
  friction: number,
): HoldNeeded[] {
  let worst: Extract<HoldNeeded, { kind: "sliding" }> | undefined;
  for (const solved of runs) {
    if (solved.set.assumptions.holds === "tied") continue;
    let [pushN, pressN] = [0, 0];
    for (const bearing of own) {
      const [x, y, z] = bearingForce(bearing, solved);
      pushN += Math.sqrt(x * x + y * y);
      pressN += Math.max(z, 0);
    }
    const frictionN = isEarthquake(solved) ? 0 : friction * pressN;
    const beyond = pushN - frictionN;
    if (beyond <= NEWTON * own.length || beyond <= (worst === undefined ? 0 : worst.forceN - worst.frictionN)) continue;
    const places = own.map(({ place }) => place);
    worst = { kind: "sliding", ownerId, places, forceN: pushN, frictionN, run: solved.run.id };
  }
  return worst === undefined ? [] : [worst];
}

export const isEarthquake = ({ run: { combination } }: SolvedRun): boolean =>
  factorOf(combination, "Eh") !== 0 || factorOf(combination, "Emh") !== 0;
