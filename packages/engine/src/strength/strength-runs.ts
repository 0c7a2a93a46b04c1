import type { ActionCase } from "../loads/action-case.ts";
import { designRuns, type DesignRun, type RunCases } from "../loads/design-runs.ts";
import { factorOf, type CombinationLevel } from "../loads/load-combination.ts";
import { LastMade } from "../numerics/last-made.ts";
import { notionalLoading } from "../loads/notional-runs.ts";
import type { SiteActions } from "../loads/site-actions.ts";
import type { Analysis } from "../load-path/analysis.ts";
import { overstrengthBelow } from "./overstrength.ts";
import { withoutDominated } from "./dominated-runs.ts";
import { withGravityAlone } from "./gravity-alone.ts";
import type { RunPlan, StrengthRun } from "./run-plan.ts";
import type { StrengthBasis } from "./strength-basis.ts";

/**
 * All combinations at both levels. Steel and concrete are held against strength-level runs, those of gravity loads with
 * imposed load everywhere again with notional loads; the ground against allowable-level ones, without moved pads. Imposed
 * load counts in full as a companion. What carries walls that do not run down is held against earthquakes with overstrength
 * besides.
 */
export function strengthRuns(
  actions: Extract<SiteActions, { accepted: true }>,
  { loads }: StrengthBasis,
  carried: Pick<Analysis, "bearings" | "footings" | "beamSupports">,
): RunPlan {
  const cases = runCases(actions);
  const seismic = actions.site?.seismic;
  const at = (level: CombinationLevel, of: RunCases, omega0?: number): readonly DesignRun[] =>
    designRuns(of, loads, {
      level,
      halfCompanionLive: false,
      overstrength: omega0 !== undefined,
      earthquake: {
        verticalShare: seismic === undefined ? 0 : loads.seismic.verticalShare(seismic.design),
        redundancy: seismic?.redundancy.factor ?? 1,
        overstrength: omega0 ?? 1,
      },
    });
  const factored = withoutDominated(at("strength", cases), actions);
  const gravity = [cases.deadMost, cases.deadLeast, cases.deadBare, ...cases.imposed, ...cases.roofLive, ...cases.snow];
  const pushed = notionalLoading(actions.building, factored, everywhere(gravity, cases), loads.notional);
  const below = overstrengthBelow(actions, carried);
  const enlarged = below === undefined ? NO_RUNS : at("strength", { ...cases, wind: [], movements: [] }, below.omega0);
  const shaken = withoutDominated(shaking(enlarged), actions);
  const allowable = withoutDominated(at("allowable", { ...cases, movements: [] }), actions);
  const all = [...gravity, ...cases.wind, ...cases.earthquake, ...cases.movements, ...pushed.cases];
  return { cases: all, runs: listed({ factored, pushed: pushed.runs, shaken, allowable }, all, below?.owners) };
}

type Lists = Readonly<Record<"factored" | "pushed" | "shaken" | "allowable", readonly DesignRun[]>>;

const NO_RUNS: readonly DesignRun[] = [];

/** Those with an earthquake. */
const shaking = (runs: readonly DesignRun[]): readonly DesignRun[] =>
  shakenOf.take(runs, [], () => runs.filter(({ combination }) => factorOf(combination, "Emh") !== 0));

const shakenOf = new LastMade<readonly DesignRun[]>();

/** All runs in one list: the same one as long as an edit leaves the lists it is put together from. */
function listed(lists: Lists, cases: readonly ActionCase[], owners?: ReadonlySet<string>): readonly StrengthRun[] {
  const { factored, pushed, shaken, allowable } = lists;
  const ownerIds = owners && [...owners].toSorted().join(" ");
  return last.take(factored, [pushed, shaken, allowable, ownerIds], () => {
    const runs = [
      ...[...factored, ...pushed].map((run): StrengthRun => ({ ...run, level: "strength" })),
      ...shaken.map((run): StrengthRun => ({ ...run, level: "strength", ...(owners && { owners }) })),
      ...allowable.map((run): StrengthRun => ({ ...run, level: "allowable" })),
    ];
    return withGravityAlone({ cases, runs }).runs;
  });
}

const last = new LastMade<readonly StrengthRun[]>();

/** Gravity loads without the patterns of imposed load: nothing leans for one unit loaded alone. */
const everywhere = (gravity: readonly ActionCase[], { imposed }: RunCases): ActionCase[] =>
  gravity.filter((action) => !imposed.slice(1).includes(action));

const runCases = (actions: Extract<SiteActions, { accepted: true }>): RunCases => ({
  deadMost: actions.dead.most,
  deadLeast: actions.dead.least,
  deadBare: actions.dead.bare,
  imposed: actions.imposed,
  roofLive: [actions.roofLive.action],
  snow: actions.site?.snow.cases ?? [],
  wind: actions.site?.wind.cases ?? [],
  earthquake: actions.site?.seismic.cases ?? [],
  movements: actions.movements,
});
