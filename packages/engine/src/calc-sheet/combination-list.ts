import type { StrengthReport } from "@cornerway/schema";
import { combinationText } from "../loads/load-combination.ts";
import type { StrengthRun } from "../strength/run-plan.ts";

type Listed = StrengthReport["combinations"][number];

/** Every combination solved, once, with how many vectors it was tried by, in the order of the runs. */
export function combinationList(runs: readonly StrengthRun[]): Listed[] {
  const listed = new Map<string, Listed>();
  for (const { combination, level } of runs) {
    const text = combinationText(combination);
    const key = `${level} ${text} ${combination.clause.place}`;
    const known = listed.get(key);
    listed.set(key, { level, text, clause: combination.clause, runs: (known?.runs ?? 0) + 1 });
  }
  return [...listed.values()];
}
