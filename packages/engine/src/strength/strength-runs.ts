import type { ActionCase } from "../loads/action-case.ts";
import { designRuns, type DesignRun, type RunCases } from "../loads/design-runs.ts";
import type { CombinationLevel } from "../loads/load-combination.ts";
import { notionalRuns } from "../loads/notional-runs.ts";
import type { SiteActions } from "../loads/site-actions.ts";
import type { StrengthBasis } from "./strength-basis.ts";

export type StrengthRun = DesignRun & { readonly level: CombinationLevel };

/** Every action case once, and every vector to solve with them. */
export type RunPlan = { readonly cases: readonly ActionCase[]; readonly runs: readonly StrengthRun[] };

/**
 * All combinations at both levels. Steel and concrete are held against strength-level runs, those of gravity loads again
 * with notional loads; the ground against allowable-level ones, without moved pads. Imposed load counts in full as a companion.
 */
export function strengthRuns(actions: Extract<SiteActions, { accepted: true }>, { loads }: StrengthBasis): RunPlan {
  const cases = runCases(actions);
  const seismic = actions.site?.seismic;
  const at = (level: CombinationLevel, of: RunCases): DesignRun[] =>
    designRuns(of, loads, {
      level,
      halfCompanionLive: false,
      overstrength: false,
      earthquake: {
        verticalShare: seismic === undefined ? 0 : loads.seismic.verticalShare(seismic.design),
        redundancy: seismic?.redundancy.factor ?? 1,
        overstrength: 1,
      },
    });
  const factored = at("strength", cases);
  const gravity = [cases.deadMost, cases.deadLeast, ...cases.imposed, ...cases.roofLive, ...cases.snow];
  const pushed = notionalRuns(actions.building, factored, gravity, loads.notional);
  const allowable = at("allowable", { ...cases, movements: [] });
  return {
    cases: [
      ...gravity,
      ...cases.wind,
      ...cases.earthquake,
      ...cases.movements,
      ...pushed.map(({ notional }) => notional),
    ],
    runs: [
      ...[...factored, ...pushed.map(({ run }) => run)].map((run): StrengthRun => ({ ...run, level: "strength" })),
      ...allowable.map((run): StrengthRun => ({ ...run, level: "allowable" })),
    ],
  };
}

const runCases = (actions: Extract<SiteActions, { accepted: true }>): RunCases => ({
  deadMost: actions.dead.most,
  deadLeast: actions.dead.least,
  imposed: actions.imposed,
  roofLive: [actions.roofLive.action],
  snow: actions.site?.snow.cases ?? [],
  wind: actions.site?.wind.cases ?? [],
  earthquake: actions.site?.seismic.cases ?? [],
  movements: actions.movements,
});
