import type { ActionCase, ActionLoad } from "./action-case.ts";
import type { BuildingFrame } from "./building-frame.ts";
import { caseResultant } from "./case-resultant.ts";
import type { NotionalRule } from "./design-basis.ts";
import type { DesignRun } from "./design-runs.ts";
import { gravityOnly } from "./expanded-combination.ts";
import { notionalCases } from "./notional-cases.ts";

/** A run with notional loads beside it, and the case they are. */
export type NotionalRun = { readonly run: DesignRun; readonly notional: ActionCase };

/**
 * Every run of gravity loads again with its notional loads, along each axis both ways: the share of what each unit
 * itself carries in that run. Runs with moved supports are left out, they differ from others by movement only.
 */
export function notionalRuns(
  building: BuildingFrame,
  runs: readonly DesignRun[],
  cases: readonly ActionCase[],
  rule: NotionalRule,
): NotionalRun[] {
  const placed = building.boxes.map((box) => box.placed);
  const gravity = new Map(cases.map((action) => [action.id, perUnit(action)]));
  function perUnit(action: ActionCase): Map<string, number> {
    return new Map(
      building.boxes.map(({ id }) => {
        const own = { ...action, loads: action.loads.filter((load) => unitOf(load) === id) };
        return [id, -caseResultant(own, placed, { xMm: 0, yMm: 0, zMm: 0 }).zN];
      }),
    );
  }
  return runs
    .filter(
      ({ combination, factors }) => gravityOnly(combination) && Object.keys(factors).every((id) => gravity.has(id)),
    )
    .flatMap((run) => {
      const weights = new Map(
        building.boxes.map(({ id }) => [
          id,
          Object.entries(run.factors).reduce(
            (sum, [name, factor]) => sum + factor * (gravity.get(name)?.get(id) ?? 0),
            0,
          ),
        ]),
      );
      return notionalCases(building, weights, run.combination.level, rule).map((notional) => {
        const named = { ...notional, id: `${notional.id} of ${run.id}` };
        return {
          notional: named,
          run: { ...run, id: `${run.id}, ${notional.id}`, factors: { ...run.factors, [named.id]: 1 } },
        };
      });
    });
}

const unitOf = (load: ActionLoad): string => ("containerId" in load ? load.containerId : load.elementId);
