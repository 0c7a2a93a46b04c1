import type { AssumptionId } from "./assumption-sets.ts";
import type { SolvedRun } from "./solve-runs.ts";
import type { Screened, StrengthPart } from "./strength-part.ts";

/** The worst of one part: over all runs, and in each set of assumptions. */
export type PartWorst = {
  readonly part: StrengthPart;
  readonly screened: Screened;
  readonly solved: SolvedRun;
  /** Greatest utilisation met in each set that was solved for it. */
  readonly envelope: ReadonlyMap<AssumptionId, number>;
  /** The worst in runs that stand as drawn, without bearings that hold what lifts; absent where there is none. */
  readonly asDrawn: number | undefined;
};

/** Runs every part through every solved run of its level, adding to what was found before. */
export function screen(
  parts: readonly StrengthPart[],
  runs: readonly SolvedRun[],
  before: readonly PartWorst[] = [],
): PartWorst[] {
  const known = new Map(before.map((worst) => [worst.part.id, worst]));
  for (const solved of runs)
    for (const part of parts) {
      if (part.level !== solved.run.level) continue;
      const screened = part.screen(solved);
      if (screened !== undefined) known.set(part.id, worse(known.get(part.id), part, screened, solved));
    }
  return [...known.values()];
}

function worse(before: PartWorst | undefined, part: StrengthPart, screened: Screened, solved: SolvedRun): PartWorst {
  const { utilisation } = screened;
  const asDrawn = solved.heldDown ? before?.asDrawn : Math.max(before?.asDrawn ?? 0, utilisation);
  const envelope = new Map(before?.envelope);
  envelope.set(solved.set.id, Math.max(envelope.get(solved.set.id) ?? 0, utilisation));
  if (before !== undefined && before.screened.utilisation >= utilisation) return { ...before, envelope, asDrawn };
  return { part, screened, solved, envelope, asDrawn };
}

/** The runs that govern some part, each once, in the order they were solved. */
export function governingRuns(worsts: readonly PartWorst[]): SolvedRun["run"][] {
  return [...new Map(worsts.map(({ solved: { run } }) => [run.id, run])).values()];
}
