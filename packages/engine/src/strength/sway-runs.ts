import { caseResultant } from "../loads/case-resultant.ts";
import type { BuildingFrame } from "../loads/building-frame.ts";
import type { LoadSymbol } from "../loads/load-symbol.ts";
import { LastMade } from "../numerics/last-made.ts";
import type { RunPlan, StrengthRun } from "./run-plan.ts";

/** The heaviest run of gravity loads, and the same pushed along either axis. */
export type SwayRuns = { readonly upright: StrengthRun; readonly pushed: readonly StrengthRun[] };

/** Undefined where no run of gravity loads has notional loads. */
export function swayRuns({ runs, cases }: RunPlan, { boxes }: BuildingFrame): SwayRuns | undefined {
  const placed = boxes.map((box) => box.placed);
  const down = new Map(cases.map((action) => [action.id, -caseResultant(action, placed, origin).zN]));
  const weightN = ({ factors }: StrengthRun): number =>
    Object.entries(factors).reduce((sum, [id, factor]) => sum + factor * (down.get(id) ?? 0), 0);
  const byId = new Map(runs.map((run) => [run.id, run]));
  const pairs = runs.flatMap((upright): SwayRuns[] => {
    const pushed = ["N +x", "N +y"].flatMap((push) => byId.get(`${upright.id}, ${push}`) ?? []);
    return upright.level === "strength" && pushed.length > 0 ? [{ upright, pushed }] : [];
  });
  return pairs.reduce<SwayRuns | undefined>(
    (most, next) => (most === undefined || weightN(next.upright) > weightN(most.upright) ? next : most),
    undefined,
  );
}

const origin = { xMm: 0, yMm: 0, zMm: 0 };

/**
 * The same runs with level loads so many times as large: what the building's own lean adds to them. Wind on roofs grows with
 * the rest; the factor of the unit that leans most stands for all, along both axes.
 */
export function enlarged({ cases, runs }: RunPlan, times: number): RunPlan {
  if (times === 1) return { cases, runs };
  const level = new Set(cases.filter(({ symbol }) => isLevel(symbol)).map(({ id }) => id));
  const grown = ({ factors }: StrengthRun): StrengthRun["factors"] =>
    Object.fromEntries(Object.entries(factors).map(([id, factor]) => [id, level.has(id) ? times * factor : factor]));
  return { cases, runs: last.take(runs, [times], () => runs.map((run) => ({ ...run, factors: grown(run) }))) };
}

/** Runs name their cases, so they stay as long as an edit leaves those and the lean. */
const last = new LastMade<readonly StrengthRun[]>();

const isLevel = (symbol: LoadSymbol): boolean =>
  symbol === "W" || symbol === "Eh" || symbol === "Emh" || symbol === "N";
