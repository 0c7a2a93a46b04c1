import type { Scheme } from "@cornerway/schema";
import { assumptionSets, softRacking, type AssumptionId } from "./assumption-sets.ts";
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

const isWhole = (id: AssumptionId): boolean =>
  assumptionSets.some((set) => set.id === id && set.solves === "every run");

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
  const leaning = yield* askLeans(helpers);
  yield* askAhead(helpers);
  const [first, ...rest] = ownOf(helpers);
  if (leaning !== undefined) share.prepare(first);
  const leans = leaning === undefined ? share.leans() : yield* told(leaning);
  const enlargement = swayFactor(leans);
  const wholeAway = yield* askScreened(helpers, ({ whole }) => whole, enlargement);
  const besideAway = yield* askBeside(helpers);
  const wholeOwn = [first, ...rest.filter(isWhole)].map((id) => step(share.screened(id, enlargement)));
  const restOwn = rest.filter((id) => !isWhole(id));
  // what helpers have not told yet is waited for
  if (helpers.length > 0) for (const id of restOwn) share.prepare(id);
  const whole = inOrder([...wholeOwn, ...(yield* toldOfSets(wholeAway, step))]);
  const names = governingNames(toldOf(whole));
  const restAway = yield* askScreened(helpers, ({ sets }) => sets, enlargement, names);
  const solvedOwn = restOwn.map((id) => step(share.screened(id, enlargement, names)));
  const besideOwn = besidesLeft(helpers).flatMap((what) => share.beside(what));
  const solved = inOrder([...solvedOwn, ...(yield* toldOfSets(restAway, step))]);
  const governing = yield* resultsOf(toldOf([...whole, ...solved]), share, helpers);
  const beside = [...(yield* toldOfAll(besideAway)), ...besideOwn];
  return strengthFrom(share, basis, { leans, enlargement, whole, rest: solved, governing, beside });
}

/** The worst of every part that is told over these sets. */
const toldOf = (sets: readonly ScreenedSet[]): WorstFound[] =>
  worstOfAll(sets.map(({ worsts }) => worsts)).filter((worst) => isTold(worst, worst.asDrawn));

/** In the order of the envelope, whoever solved them. */
const inOrder = (sets: readonly ScreenedSet[]): ScreenedSet[] =>
  assumptionSets.flatMap(({ id }) => sets.filter(({ report }) => report.assumptions === id));

/** Who helps, by place, with what he is to do. */
type Helper = HelpersShare & { readonly helper: number };

/** Sets this thread solves, the first of the envelope before all. */
function ownOf(helpers: readonly Helper[]): [AssumptionId, ...AssumptionId[]] {
  const away = new Set(helpers.flatMap(({ whole, sets }) => [...whole, ...sets]));
  const [first, ...others] = assumptionSets;
  return [first.id, ...others.map(({ id }) => id).filter((id) => !away.has(id))];
}

/** Asked of whoever condenses the softest walls anyway; undefined where nobody helps. */
function* askLeans(helpers: readonly Helper[]): SharedWork<Asked<"leans"> | undefined> {
  const softest = helpers.find(({ sets }) => sets.includes(softRacking.id));
  return softest && (yield* ask(softest.helper, { work: "leans" }));
}

function* askAhead(helpers: readonly Helper[]): SharedWork<void> {
  for (const { helper, ahead } of helpers) for (const set of ahead) yield* ask(helper, { work: "prepare", set });
}

/** Sets that helpers solve, for all runs or for those named; they are asked before this thread does its own. */
function* askScreened(
  helpers: readonly Helper[],
  which: (helper: Helper) => readonly AssumptionId[],
  enlargement: number,
  names?: ReadonlySet<string>,
): SharedWork<Asked<"screened">[]> {
  const asked: Asked<"screened">[] = [];
  for (const one of helpers)
    for (const set of which(one))
      asked.push(yield* ask(one.helper, { work: "screened", set, enlargement, ...(names && { names }) }));
  return asked;
}

function* toldOfSets(
  asked: readonly Asked<"screened">[],
  step: (set: ScreenedSet) => ScreenedSet,
): SharedWork<ScreenedSet[]> {
  const sets: ScreenedSet[] = [];
  for (const one of asked) sets.push(step(yield* told(one)));
  return sets;
}

/** What hangs on no run, while the runs that govern are sought. */
function* askBeside(helpers: readonly Helper[]): SharedWork<Asked<"beside">[]> {
  const asked: Asked<"beside">[] = [];
  for (const { helper, beside } of helpers)
    for (const what of beside) asked.push(yield* ask(helper, { work: "beside", what }));
  return asked;
}

/** The working of each part where the run that governs it was solved. */
function* resultsOf(
  worsts: readonly WorstFound[],
  share: StrengthShare,
  helpers: readonly Helper[],
): SharedWork<ElementResult[]> {
  const governedIn = (sets: readonly AssumptionId[]) =>
    worsts.filter((worst) => sets.includes(governsIn(worst).assumptions));
  const asked: Asked<"results">[] = [];
  for (const { helper, whole, sets } of helpers)
    asked.push(yield* ask(helper, { work: "results", worsts: governedIn([...whole, ...sets]) }));
  const own = share.results(governedIn(ownOf(helpers)));
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
