import type { CondensationCache } from "../analysis/condensation-cache.ts";
import { buildingSolver } from "../building.ts";
import type { Analysis } from "../load-path/analysis.ts";
import type { ActionCase } from "../loads/action-case.ts";
import type { LoadSymbol } from "../loads/load-symbol.ts";
import { buildModel } from "../model/build-model.ts";
import { usualAssumptions } from "../model/model-assumptions.ts";
import { modelledBearings } from "../strength/modelled-bearings.ts";
import { reactionsFrom, type Reaction } from "./solved-path.ts";

/** What the ground gives to one action case by itself, unfactored; null where even with every bearing held nothing stands. */
export type CaseReactions = {
  readonly caseId: string;
  readonly symbol: LoadSymbol;
  readonly reactions: readonly Reaction[] | null;
};

/** Dead load at its heaviest stands for all of it; movements and notional loads have no reactions of their own to design by. */
const hasOwnReactions = ({ id, symbol }: ActionCase): boolean =>
  symbol !== "T" && symbol !== "N" && (symbol !== "D" || id === "D most");

/**
 * Reactions of every action case alone, with every bearing held as if connections were there: so they add up, and what is
 * negative is a pull that a sum with dead load may or may not press down.
 */
export function caseReactions(
  analysis: Analysis,
  cases: readonly ActionCase[],
  cache: CondensationCache,
): CaseReactions[] {
  const alone = cases.filter(hasOwnReactions);
  const built = buildModel(analysis, alone, {}, usualAssumptions);
  const bearings = modelledBearings(built, analysis.structure.building);
  const combos = Object.fromEntries(alone.map(({ id }) => [id, { [id]: 1 }]));
  const answers = buildingSolver(built.model, cache)(combos, new Set(bearings.map(({ name }) => name)));
  return alone.map(({ id, symbol }) => {
    const answer = answers.get(id);
    const stands = answer !== undefined && !("refused" in answer);
    return { caseId: id, symbol, reactions: stands ? reactionsFrom(analysis, built, answer) : null };
  });
}
