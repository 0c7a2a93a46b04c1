import type { Scheme } from "@cornerway/schema";
import { assumptionSets, type AssumptionId } from "./assumption-sets.ts";
import type { StrengthMemory } from "./solve-runs.ts";
import type { StrengthBasis } from "./strength-basis.ts";
import { strengthFrom, type Strength } from "./strength-from.ts";
import { strengthGround } from "./strength-plan.ts";
import { besides, StrengthShare } from "./strength-share.ts";
import { swayFactor } from "./sway.ts";
import { governingNames, worstOfAll } from "./worst-found.ts";

export type { Strength } from "./strength-from.ts";

/** Told after each set of assumptions, how many of how many are solved. */
export type TellProgress = (done: number, of: number) => void;

/** Sets of assumptions one run solves. */
export const strengthSteps: number = assumptionSets.length;

/** Those solved for every run, and those solved for the runs that govern in them. */
export const wholeSets = assumptionSets.filter(({ solves }) => solves === "every run").map(({ id }) => id);
export const restSets = assumptionSets.filter(({ solves }) => solves === "governing runs").map(({ id }) => id);

/**
 * Actions, model, solution over the envelope, screening of every part in every run, full working where something governs,
 * verdicts. Pure. Throws a RangeError for a scheme without containers. `strengthShared` does the same in several threads.
 */
export function strengthOf(
  scheme: Scheme,
  basis: StrengthBasis,
  memory: StrengthMemory,
  tell: TellProgress = () => undefined,
): Strength {
  const ground = strengthGround(scheme, basis);
  if (!ground.accepted) return ground;
  const share = new StrengthShare(ground, basis, memory);
  const leans = share.leans();
  const enlargement = swayFactor(leans);
  let done = 0;
  const screened = (id: AssumptionId, names?: ReadonlySet<string>) => {
    const set = share.screened(id, enlargement, names);
    tell(++done, strengthSteps);
    return set;
  };
  const whole = wholeSets.map((id) => screened(id));
  const names = governingNames(worstOfAll(whole.map(({ worsts }) => worsts)));
  const rest = restSets.map((id) => screened(id, names));
  const governing = share.results(worstOfAll([...whole, ...rest].map(({ worsts }) => worsts)));
  const beside = besides.flatMap((what) => share.beside(what));
  return strengthFrom(share, basis, { leans, enlargement, whole, rest, governing, beside });
}
