import type { FrameRefusal, FrameSolution } from "../analysis/frame-result.ts";
import type { CondensationCache } from "../analysis/condensation-cache.ts";
import type { UnitSolution } from "../analysis/recover-unit.ts";
import { solveBuilding, type BuildingCombination, type BuildingResult } from "../building.ts";
import type { Analysis } from "../load-path/analysis.ts";
import type { ActionCase } from "../loads/action-case.ts";
import { buildModel, type BuiltModel } from "../model/build-model.ts";
import type { BuildingModel } from "../model/building-model.ts";
import type { AssumptionSet } from "./assumption-sets.ts";
import { smallMovements } from "./small-movements.ts";
import type { StrengthRun } from "./strength-runs.ts";

/** One run under one set of assumptions. `heldDown`: it has no equilibrium unless its bearings hold what lifts. */
export type SolvedRun = {
  readonly run: StrengthRun;
  readonly set: AssumptionSet;
  readonly heldDown: boolean;
  readonly frame: FrameSolution;
  readonly unit: (id: string) => UnitSolution;
};

export type SolvedSet = {
  readonly set: AssumptionSet;
  readonly built: BuiltModel;
  readonly solved: readonly SolvedRun[];
  /** Runs without equilibrium as drawn, with what moves. */
  readonly refused: readonly RefusedRun[];
};

export type RefusedRun = {
  readonly run: StrengthRun;
  readonly set: AssumptionSet;
  readonly refusal: FrameRefusal;
  /** Whether it stands once every bearing holds what lifts. */
  readonly standsHeldDown: boolean;
};

/**
 * Solves these runs with contact. One without equilibrium is solved again with every bearing holding what lifts, as if
 * connections were there: its forces say what such connections must carry, never that the scheme works.
 */
export function solveRuns(
  analysis: Analysis,
  cases: readonly ActionCase[],
  runs: readonly StrengthRun[],
  set: AssumptionSet,
  cache: CondensationCache,
): SolvedSet {
  const combos = Object.fromEntries(runs.map(({ id, factors }) => [id, factors]));
  const built = buildModel(analysis, cases, combos, set.assumptions);
  const asDrawn = solvedCombos(built.model, cache);
  const lifting = runs.filter(({ id }) => !stands(asDrawn[id]));
  const held = lifting.length === 0 ? {} : solvedCombos(heldDown(built.model, lifting), cache);
  const unitOf = lastUnit();
  const answer =
    (combos: typeof asDrawn, down: boolean) =>
    (run: StrengthRun): SolvedRun[] => {
      const combination = combos[run.id];
      if (combination === undefined || !stands(combination)) return [];
      const { frame } = combination;
      return [{ run, set, heldDown: down, frame, unit: (id) => unitOf(combination, id) }];
    };
  return {
    set,
    built,
    solved: [...runs.flatMap(answer(asDrawn, false)), ...lifting.flatMap(answer(held, true))],
    refused: lifting.flatMap((run) => {
      const refusal = asDrawn[run.id];
      if (refusal === undefined || stands(refusal)) return [];
      return [{ run, set, refusal, standsHeldDown: stands(held[run.id]) }];
    }),
  };
}

const solvedCombos = (model: BuildingModel, cache: CondensationCache): BuildingResult["combos"] =>
  Object.fromEntries(
    Object.entries(solveBuilding(model, cache).combos).map(([id, answer]) => [id, smallMovements(answer)]),
  );

const stands = (answer: BuildingCombination | FrameRefusal | undefined): answer is BuildingCombination =>
  answer !== undefined && !("refused" in answer);

function heldDown(model: BuildingModel, runs: readonly StrengthRun[]): BuildingModel {
  return {
    ...model,
    links: model.links.map((link) => ({ ...link, compression_only: false })),
    supports: model.supports.map((support) => ({ ...support, compression_only: false })),
    combos: Object.fromEntries(runs.map(({ id, factors }) => [id, factors])),
  };
}

/** Keeps the inside of the unit asked for last, and no other: parts ask unit by unit, run by run, and all would fill memory. */
function lastUnit() {
  let last: { readonly of: BuildingCombination; readonly id: string; readonly solution: UnitSolution } | undefined;
  return (of: BuildingCombination, id: string): UnitSolution => {
    if (last?.of !== of || last.id !== id) last = { of, id, solution: of.unit(id) };
    return last.solution;
  };
}
