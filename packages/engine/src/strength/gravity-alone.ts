import { combinationText, type LoadCombination } from "../loads/load-combination.ts";
import type { LoadSymbol } from "../loads/load-symbol.ts";
import type { RunPlan, StrengthRun } from "./run-plan.ts";

/**
 * Runs at allowable level with level loads, each knowing the run of its gravity loads by themselves; such runs are added where
 * there is none. What sways a building is told from what already acted in it by the difference of the two.
 */
export function withGravityAlone({ cases, runs }: RunPlan): RunPlan {
  const level = new Set(cases.filter(({ symbol }) => swaying.has(symbol)).map(({ id }) => id));
  const sways = (run: StrengthRun): boolean =>
    run.level === "allowable" && Object.keys(run.factors).some((id) => level.has(id));
  const known = new Map(runs.filter((run) => !sways(run)).map((run) => [keyOf(run), run.id]));
  const added: StrengthRun[] = [];
  const told = runs.map((run) => {
    if (!sways(run)) return run;
    const alone = gravityOf(run, level);
    const gravityAlone = known.get(keyOf(alone)) ?? alone.id;
    if (gravityAlone === alone.id && !known.has(keyOf(alone))) {
      known.set(keyOf(alone), alone.id);
      added.push(alone);
    }
    return { ...run, gravityAlone };
  });
  return { cases, runs: [...told, ...added] };
}

/** These runs and those of their gravity loads by themselves, each once. */
export function andGravityAlone(chosen: readonly StrengthRun[], all: readonly StrengthRun[]): StrengthRun[] {
  const ids = new Set(
    chosen.flatMap(({ id, gravityAlone }) => [id, ...(gravityAlone === undefined ? [] : [gravityAlone])]),
  );
  return all.filter(({ id }) => ids.has(id));
}

const swaying: ReadonlySet<LoadSymbol> = new Set(["W", "Eh", "Emh"]);

function keyOf({ level, factors }: StrengthRun): string {
  const known = told.get(factors) ?? JSON.stringify(factors);
  told.set(factors, known);
  return `${level} ${known}`;
}

/** Factors of runs stay the same from one edit to the next. */
const told = new WeakMap<StrengthRun["factors"], string>();

function gravityOf({ combination, factors, level }: StrengthRun, sway: ReadonlySet<string>): StrengthRun {
  const own = Object.entries(factors).filter(([id]) => !sway.has(id));
  const alone: LoadCombination = {
    ...combination,
    id: `${combination.id}, gravity alone`,
    terms: combination.terms.filter(({ symbol }) => !swaying.has(symbol)),
  };
  return {
    id: `${combinationText(alone)}, gravity alone: ${own.map(([id]) => id).join(", ")}`,
    combination: alone,
    factors: Object.fromEntries(own),
    level,
  };
}
