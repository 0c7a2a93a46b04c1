import type { StrengthReport } from "@cornerway/schema";
import type { Strength } from "../strength/strength-of.ts";

type Told = StrengthReport["withoutEquilibrium"][number];
type Refused = Extract<Strength, { accepted: true }>["refusedRuns"][number];

/** Runs that do not stand as drawn, told together where the same moves and the same has to be held. */
export function withoutEquilibrium(refused: readonly Refused[]): Told[] {
  const told = new Map<string, Told>();
  for (const { run, assumptions, words, held } of refused) {
    const key = [assumptions, words, held === undefined ? "" : held.join(" ")].join("|");
    const known = told.get(key);
    const first = known?.first ?? run;
    told.set(key, { assumptions, words, ...(held && { held: [...held] }), first, runs: (known?.runs ?? 0) + 1 });
  }
  return [...told.values()];
}
