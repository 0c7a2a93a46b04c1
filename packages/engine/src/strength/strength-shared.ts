import type { Scheme } from "@cornerway/schema";
import { assumptionSets, type AssumptionId } from "./assumption-sets.ts";
import type { ElementResult } from "./element-result.ts";
import type { ScreenedSet } from "./screened-set.ts";
import { splitOver, type HelpersShare } from "./share-split.ts";
import { ask, told, type Asked, type SharedWork } from "./shared-work.ts";
import type { StrengthMemory } from "./solve-runs.ts";
import type { StrengthBasis } from "./strength-basis.ts";
import { strengthFrom, type Strength } from "./strength-from.ts";
import { strengthGround } from "./strength-plan.ts";
import { besides, StrengthShare, type Beside } from "./strength-share.ts";
import { isTold } from "./sure-part.ts";
import { swayFactor } from "./sway.ts";
import { governingNames, governsIn, worstOfAll, type WorstFound } from "./worst-found.ts";

/** Told after each set of assumptions, how many of how many are solved. */
export type TellProgress = (done: number, of: number) => void;

/** Sets of assumptions one run solves. */
export const strengthSteps: number = assumptionSets.length;

/** Those solved for every run, and those solved for the runs that govern in them. */
const wholeSets = assumptionSets.filter(({ solves }) => solves === "every run").map(({ id }) => id);
const restSets = assumptionSets.filter(({ solves }) => solves === "governing runs").map(({ id }) => id);

/**
 * Actions, model, solution over the envelope, screening of every part in every run, full working where something governs,
 * verdicts: to the same bit whether it is done here or by as many helpers as are said. `memory` is left with all that stands
 * on the usual stiffness. Throws a RangeError for a scheme without containers.
 */
export function* strengthShared(
  scheme: Scheme,
  basis: StrengthBasis,
  memory: StrengthMemory,
  helping: number,
  tell: TellProgress = () => undefined,
): SharedWork<Strength> {
  const ground = strengthGround(scheme, basis);
  if (!ground.accepted) return ground;
  const share = new StrengthShare(ground, basis, memory);
  const helpers = splitOver(helping).map((does, helper) => ({ ...does, helper }));
  let done = 0;
  const step = (set: ScreenedSet): ScreenedSet => {
    tell(++done, strengthSteps);
    return set;
  };

  for (const { helper } of helpers) yield* ask(helper, { work: "take up", scheme: ground.scheme });
  const leaning = helpers.length === 0 ? undefined : yield* ask(0, { work: "leans" });
  const asked = yield* askAhead(helpers);
  if (leaning !== undefined) for (const id of wholeSets.slice(0, 1)) share.prepare(id);
  const leans = leaning === undefined ? share.leans() : yield* told(leaning);
  const enlargement = swayFactor(leans);
  const whole = wholeSets.map((id) => step(share.screened(id, enlargement)));
  const names = governingNames(toldOf(whole));
  const resting = yield* askRest(helpers, enlargement, names);
  const own = restSets.filter((id) => !resting.has(id)).map((id) => step(share.screened(id, enlargement, names)));
  const ownBeside = besidesLeft(helpers).flatMap((what) => share.beside(what));
  const elsewhere: ScreenedSet[] = [];
  for (const asked of resting.values()) elsewhere.push(step(yield* told(asked)));
  const rest = inOrder([...own, ...elsewhere]);
  const governing = yield* resultsOf(toldOf([...whole, ...rest]), share, helpers);
  const beside = [...(yield* toldOfAll(asked)), ...ownBeside];
  return strengthFrom(share, basis, { leans, enlargement, whole, rest, governing, beside });
}

/** The worst of every part that is told over these sets. */
const toldOf = (sets: readonly ScreenedSet[]): WorstFound[] =>
  worstOfAll(sets.map(({ worsts }) => worsts)).filter((worst) => isTold(worst, worst.asDrawn));

/** In the order of the envelope, whoever solved them. */
const inOrder = (sets: readonly ScreenedSet[]): ScreenedSet[] =>
  restSets.flatMap((id) => sets.filter(({ report }) => report.assumptions === id));

/** Who helps, by place, with what he is to do. */
type Helper = HelpersShare & { readonly helper: number };

/** What hangs on no run: asked for at once, so that no helper waits. */
function* askAhead(helpers: readonly Helper[]): SharedWork<Asked<"beside">[]> {
  const asked: Asked<"beside">[] = [];
  for (const { helper, ahead, beside } of helpers) {
    for (const what of beside) asked.push(yield* ask(helper, { work: "beside", what }));
    for (const set of ahead) yield* ask(helper, { work: "prepare", set });
  }
  return asked;
}

/** Sets that helpers solve for what governs; they are asked before this thread does its own. */
function* askRest(
  helpers: readonly Helper[],
  enlargement: number,
  names: ReadonlySet<string>,
): SharedWork<Map<AssumptionId, Asked<"screened">>> {
  const resting = new Map<AssumptionId, Asked<"screened">>();
  for (const { helper, sets } of helpers)
    for (const set of sets) resting.set(set, yield* ask(helper, { work: "screened", set, enlargement, names }));
  return resting;
}

/** The working of each part where the run that governs it was solved. */
function* resultsOf(
  worsts: readonly WorstFound[],
  share: StrengthShare,
  helpers: readonly Helper[],
): SharedWork<ElementResult[]> {
  const governedIn = (sets: readonly string[]) => worsts.filter((worst) => sets.includes(governsIn(worst).assumptions));
  const asked: Asked<"results">[] = [];
  for (const { helper, sets } of helpers) asked.push(yield* ask(helper, { work: "results", worsts: governedIn(sets) }));
  const away = new Set(helpers.flatMap(({ sets }) => sets));
  const own = share.results(worsts.filter((worst) => !away.has(governsIn(worst).assumptions)));
  const results = new Map([...(yield* toldOfAll(asked)), ...own].map((result) => [result.id, result]));
  return worsts.flatMap(({ partId }) => results.get(partId) ?? []);
}

function besidesLeft(helpers: readonly Helper[]): Beside[] {
  const away = new Set(helpers.flatMap(({ beside }) => beside));
  return besides.filter((what) => !away.has(what));
}

function* toldOfAll(asked: readonly Asked<"beside" | "results">[]): SharedWork<ElementResult[]> {
  const all: ElementResult[] = [];
  for (const one of asked) all.push(...(yield* told(one)));
  return all;
}
