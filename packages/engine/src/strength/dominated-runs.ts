import type { ActionCase } from "../loads/action-case.ts";
import type { DesignRun } from "../loads/design-runs.ts";
import { gravityOnly } from "../loads/expanded-combination.ts";
import { factorOf } from "../loads/load-combination.ts";
import { LastMade } from "../numerics/last-made.ts";
import type { SiteActions } from "../loads/site-actions.ts";

type Accepted = Extract<SiteActions, { accepted: true }>;

/**
 * The runs without those that others stand for. All three rules are common practice, no published source:
 * wind and earthquake with all dead load and no imposed load lie between the least and the greatest gravity load, which
 * are both run; of two roof loads in the same sum the one that is nowhere greater is left out; supports move beside the
 * sum in which imposed load leads, and a pad that is low moves less than one that has settled.
 */
export function withoutDominated(runs: readonly DesignRun[], actions: Accepted): readonly DesignRun[] {
  return last.take(runs, [decidingOn(actions)], () => {
    const live = new Set(actions.imposed.map(({ id }) => id));
    const lesser = lesserRoofs(runs, actions);
    return runs.filter(
      (run) =>
        !isBetweenGravities(run, live) &&
        !lesser.has(run.id) &&
        !isMovedBesideRoof(run, actions) &&
        !isLow(run, actions),
    );
  });
}

/** Runs are asked about again after every edit. */
const last = new LastMade<readonly DesignRun[]>();

/** All of the actions that decides which runs others stand for. */
const decidingOn = ({ imposed, movements, roofLive, site }: Accepted): string =>
  JSON.stringify([
    imposed.map(({ id }) => id),
    movements.map((movement) => [movement.id, downOf(movement)]),
    roofLive.action.id,
    leastPa(roofLive.action),
    site?.snow.cases.map((snow) => [snow.id, mostPa(snow)]),
  ]);

function isBetweenGravities({ combination, factors }: DesignRun, live: ReadonlySet<string>): boolean {
  if (gravityOnly(combination) || live.size === 0 || factorOf(combination, "L") === 0) return false;
  return !Object.keys(factors).some((id) => live.has(id));
}

const movementIn = ({ factors }: DesignRun, { movements }: Accepted): ActionCase | undefined =>
  movements.find(({ id }) => id in factors);

function isMovedBesideRoof(run: DesignRun, actions: Accepted): boolean {
  const { combination } = run;
  const roof = Math.max(factorOf(combination, "S"), factorOf(combination, "Lr"));
  return movementIn(run, actions) !== undefined && roof > factorOf(combination, "L");
}

/** Low and settled go the same way: where settlement is the greater, low is on the way to it. */
function isLow(run: DesignRun, actions: Accepted): boolean {
  const movement = movementIn(run, actions);
  if (movement === undefined || !movement.id.endsWith(" low")) return false;
  const settled = actions.movements.find(({ id }) => id === movement.id.replace(/ low$/, " settled"));
  return settled !== undefined && downOf(settled) >= downOf(movement);
}

const downOf = ({ loads: [load] }: ActionCase): number => (load?.kind === "movement" ? load.downMm : 0);

/** Sums that differ by their roof load alone, where that load is nowhere greater than in another of them. */
function lesserRoofs(runs: readonly DesignRun[], { roofLive, site }: Accepted): Set<string> {
  const [uniform] = site?.snow.cases ?? [];
  if (uniform === undefined) return new Set();
  const [snowPa, livePa] = [mostPa(uniform), leastPa(roofLive.action)];
  const others = new Map<string, { id: string; live: number }[]>();
  for (const run of runs) {
    const live = run.factors[roofLive.action.id];
    if (live === undefined) continue;
    const key = besides(run, roofLive.action.id);
    others.set(key, [...(others.get(key) ?? []), { id: run.id, live }]);
  }
  const lesser = new Set<string>();
  for (const run of runs) {
    const snow = run.factors[uniform.id];
    if (snow === undefined) continue;
    for (const twin of others.get(besides(run, uniform.id)) ?? [])
      if (snow * snowPa <= twin.live * livePa) lesser.add(run.id);
  }
  return lesser;
}

function besides({ combination, factors }: DesignRun, roof: string): string {
  const known = told.get(factors);
  if (known?.roof === roof) return known.key;
  const key = JSON.stringify([combination.level, Object.entries(factors).filter(([id]) => id !== roof)]);
  told.set(factors, { roof, key });
  return key;
}

/** Runs are asked about again after every edit; a sum has one load on its roof. */
const told = new WeakMap<DesignRun["factors"], { readonly roof: string; readonly key: string }>();

const pressures = ({ loads }: ActionCase): number[] =>
  loads.flatMap((load) => (load.kind === "on" && load.surface === "roof" ? [load.patch.pressurePa] : []));

const mostPa = (action: ActionCase): number =>
  action.loads.every(({ kind }) => kind === "on") ? Math.max(0, ...pressures(action)) : Infinity;
const leastPa = (action: ActionCase): number => Math.min(Infinity, ...pressures(action));
