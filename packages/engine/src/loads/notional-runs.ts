import type { ActionCase, ActionLoad } from "./action-case.ts";
import type { BuildingFrame } from "./building-frame.ts";
import { caseResultant } from "./case-resultant.ts";
import type { NotionalRule } from "./design-basis.ts";
import type { DesignRun } from "./design-runs.ts";
import { gravityOnly } from "./expanded-combination.ts";
import { LastMade } from "../numerics/last-made.ts";
import { RecentlyMade } from "../numerics/recently-made.ts";
import { notionalCases } from "./notional-cases.ts";

/** Notional loads of each case of gravity loads along each axis, and the runs that take them. */
export type NotionalLoading = { readonly cases: readonly ActionCase[]; readonly runs: readonly DesignRun[] };

/**
 * Every run of gravity loads again with its notional loads, along each axis both ways: the share of what each unit
 * itself carries in that run. Runs with moved supports are left out, they differ from others by movement only.
 */
export function notionalLoading(
  building: BuildingFrame,
  runs: readonly DesignRun[],
  cases: readonly ActionCase[],
  rule: NotionalRule,
): NotionalLoading {
  const gravity = new Set(cases.map(({ id }) => id));
  const pushed = cases.flatMap((action) => pushesOf(building, action, rule));
  return {
    cases: pushed,
    runs: pushedRuns(runs, gravity, rule),
  };
}

/** Told by its name and what it weighs on each unit: where one is moved about, the notional loads stay. */
function pushesOf(building: BuildingFrame, action: ActionCase, rule: NotionalRule): readonly ActionCase[] {
  const own = ownLoads(building, action);
  const known = pushesOn.get(building) ?? new RecentlyMade<readonly ActionCase[]>(CASES_KEPT);
  pushesOn.set(building, known);
  return known.take(JSON.stringify([action.id, rule, ...own.values()]), () =>
    notionalCases(building, own, rule).map((push) => ({ ...push, id: notionalOf(push.id, action.id) })),
  );
}

const pushesOn = new WeakMap<BuildingFrame, RecentlyMade<readonly ActionCase[]>>();
/** Of three dead loads, imposed load everywhere and what lies on roofs, before and after an edit. */
const CASES_KEPT = 16;

function pushedRuns(
  runs: readonly DesignRun[],
  gravity: ReadonlySet<string>,
  rule: NotionalRule,
): readonly DesignRun[] {
  return last.take(runs, [[...gravity].join("; "), rule], () =>
    runs
      .filter(
        ({ combination, factors }) => gravityOnly(combination) && Object.keys(factors).every((id) => gravity.has(id)),
      )
      .flatMap((run) => ways.map((way) => withPushes(run, way, rule))),
  );
}

/** Runs are asked about again after every edit. */
const last = new LastMade<readonly DesignRun[]>();

const ways = [
  { name: "N +x", axis: "N x", sign: 1 },
  { name: "N -x", axis: "N x", sign: -1 },
  { name: "N +y", axis: "N y", sign: 1 },
  { name: "N -y", axis: "N y", sign: -1 },
] as const;

const notionalOf = (axis: string, caseId: string): string => `${axis} of ${caseId}`;

function withPushes(
  run: DesignRun,
  { name, axis, sign }: (typeof ways)[number],
  { allowableFactor }: NotionalRule,
): DesignRun {
  const level = run.combination.level === "allowable" ? allowableFactor : 1;
  const pushes = Object.entries(run.factors).map(([id, factor]) => [notionalOf(axis, id), sign * level * factor]);
  return { ...run, id: `${run.id}, ${name}`, factors: { ...run.factors, ...Object.fromEntries(pushes) } };
}

/** What each unit itself carries of a case, N down. */
function ownLoads({ boxes }: BuildingFrame, action: ActionCase): Map<string, number> {
  const placed = boxes.map((box) => box.placed);
  return new Map(
    boxes.map(({ id }) => {
      const own = { ...action, loads: action.loads.filter((load) => unitOf(load) === id) };
      return [id, -caseResultant(own, placed, { xMm: 0, yMm: 0, zMm: 0 }).zN];
    }),
  );
}

const unitOf = (load: ActionLoad): string => ("containerId" in load ? load.containerId : load.elementId);
