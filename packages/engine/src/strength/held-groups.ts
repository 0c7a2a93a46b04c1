import type { StrengthRun } from "./run-plan.ts";

/** Runs to solve with the bearings of these units and posts held. */
export type HeldGroup = { readonly held: readonly string[]; readonly runs: readonly StrengthRun[] };

/** A run that does not stand so, and the units and posts that move in it. */
export type Fallen = {
  readonly run: StrengthRun;
  readonly held: readonly string[];
  readonly moving: readonly string[];
};

/**
 * What to hold for each run that fell: what was held and what moved besides. Where nothing else moved the same bearings would
 * give the same answer, so everything is held at once, as it is `atLast`. What falls with everything held stands by nothing.
 */
export function heldNext(fallen: readonly Fallen[], everything: readonly string[], atLast: boolean): HeldGroup[] {
  const groups = new Map<string, { readonly held: readonly string[]; readonly runs: StrengthRun[] }>();
  for (const { run, held, moving } of fallen) {
    if (held === everything) continue;
    const wider = [...new Set([...held, ...moving])].sort();
    const next = atLast || wider.length === held.length ? everything : wider;
    const key = next.join(" ");
    const group = groups.get(key);
    if (group === undefined) groups.set(key, { held: next, runs: [run] });
    else group.runs.push(run);
  }
  return [...groups.values()];
}
