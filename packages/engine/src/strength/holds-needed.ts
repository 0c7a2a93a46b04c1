import { factorOf } from "../loads/load-combination.ts";
import { bearingForce, type ModelledBearing } from "./modelled-bearings.ts";
import type { StrengthRun } from "./run-plan.ts";
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
  const factored = runs.filter(({ run }) => run.level === "strength");
  return [...freeBearings(bearings)].flatMap(([ownerId, own]) => {
    const against = factored.filter(({ run }) => run.owners?.has(ownerId) !== false);
    return [...uplift(ownerId, own, against), ...sliding(ownerId, own, against, friction)];
  });
}

/** What several sets of runs ask for, each told by `holdsNeeded`, as if asked of all their runs in this order. */
export function holdsOfAll(
  bearings: readonly ModelledBearing[],
  sets: readonly (readonly HoldNeeded[])[],
): HoldNeeded[] {
  const all = sets.flat();
  return [...freeBearings(bearings).keys()].flatMap((ownerId) =>
    kinds.flatMap((kind) => {
      const [first, ...others] = all.filter((hold) => hold.ownerId === ownerId && hold.kind === kind);
      return first === undefined ? [] : [others.reduce(together, first)];
    }),
  );
}

const kinds = ["uplift", "sliding"] as const;

/** The one that asks more; what lifts in any run needs a hold. */
function together(known: HoldNeeded, next: HoldNeeded): HoldNeeded {
  const worst = beyond(next) > beyond(known) ? next : known;
  return known.kind === "sliding" ? worst : { ...worst, places: [...new Set([...known.places, ...next.places])] };
}

const beyond = (hold: HoldNeeded): number => (hold.kind === "sliding" ? hold.forceN - hold.frictionN : hold.forceN);

/** Bearings that nothing drawn holds, by what bears. */
function freeBearings(bearings: readonly ModelledBearing[]): Map<string, ModelledBearing[]> {
  const free = new Map<string, ModelledBearing[]>();
  for (const bearing of bearings) {
    if (bearing.planned.heldById !== undefined) continue;
    const list = free.get(bearing.ownerId);
    if (list === undefined) free.set(bearing.ownerId, [bearing]);
    else list.push(bearing);
  }
  return free;
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
    const more = pushN - frictionN;
    if (more <= NEWTON * own.length || more <= (worst === undefined ? 0 : beyond(worst))) continue;
    const places = own.map(({ place }) => place);
    worst = { kind: "sliding", ownerId, places, forceN: pushN, frictionN, run: solved.run.id };
  }
  return worst === undefined ? [] : [worst];
}

export const isEarthquake = ({ run }: SolvedRun): boolean => isShaken(run);

export const isShaken = ({ combination }: StrengthRun): boolean =>
  factorOf(combination, "Eh") !== 0 || factorOf(combination, "Emh") !== 0;
