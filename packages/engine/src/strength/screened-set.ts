import { isHeldAgainst, screen } from "./screen.ts";
import { holdsNeeded, type HoldNeeded } from "./holds-needed.ts";
import type { AssumptionId } from "./assumption-sets.ts";
import type { ModelledBearing } from "./modelled-bearings.ts";
import type { RefusedRun, SolvedRun, SolvedSet } from "./solve-runs.ts";
import type { StrengthPart } from "./strength-part.ts";
import { worstFound, type WorstFound } from "./worst-found.ts";

/** What was run under one set of assumptions. */
export type SetReport = {
  readonly assumptions: AssumptionId;
  readonly runs: number;
  readonly withoutEquilibrium: number;
  readonly worstResidual: number;
};

/** All that a solved set says of a scheme, as plain data, which can go from thread to thread. */
export type ScreenedSet = {
  readonly report: SetReport;
  readonly worsts: readonly WorstFound[];
  readonly refused: readonly RefusedRun[];
  readonly holds: readonly HoldNeeded[];
  readonly checks: number;
};

/** Every part against every run of the set. */
export const screenedSet = (
  parts: readonly StrengthPart[],
  bearings: readonly ModelledBearing[],
  solved: SolvedSet,
  friction: number,
): ScreenedSet => ({
  report: reportOf(solved),
  worsts: screen(parts, solved.solved).map(worstFound),
  refused: solved.refused,
  holds: holdsNeeded(bearings, solved.solved, friction),
  checks: checksMade(
    parts.filter(({ sureOf }) => sureOf === undefined),
    solved,
  ),
});

/** Throws for a solution that is no number: it would compare as within everything. */
function reportOf({ set, solved, refused }: SolvedSet): SetReport {
  const worstResidual = solved.reduce((worst, { residual }) => Math.max(worst, residual), 0);
  if (!Number.isFinite(worstResidual)) throw new Error(`the solution with ${set.id} is no number`);
  const runs = solved.length + refused.filter(({ held }) => held === undefined).length;
  return { assumptions: set.id, runs, withoutEquilibrium: refused.length, worstResidual };
}

/** Every part against every run of its level; runs for a few owners only against theirs. */
function checksMade(parts: readonly StrengthPart[], { solved }: SolvedSet): number {
  const held = new Map<string, number>();
  const heldAgainst = ({ run }: SolvedRun): number => {
    if (run.owners !== undefined) return parts.filter((part) => isHeldAgainst(part, run)).length;
    const known = held.get(run.level) ?? parts.filter(({ level }) => level === run.level).length;
    held.set(run.level, known);
    return known;
  };
  return solved.reduce((sum, one) => sum + heldAgainst(one), 0);
}
