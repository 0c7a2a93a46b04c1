import type { Scheme } from "@cornerway/schema";
import type { AssumptionId } from "./assumption-sets.ts";
import type { ElementResult } from "./element-result.ts";
import type { ScreenedSet } from "./screened-set.ts";
import type { ShareElsewhere } from "./share-elsewhere.ts";
import { splitOver, type HelpersShare } from "./share-split.ts";
import type { StrengthMemory } from "./solve-runs.ts";
import type { StrengthBasis } from "./strength-basis.ts";
import { strengthFrom, type Strength } from "./strength-from.ts";
import { restSets, strengthOf, strengthSteps, wholeSets, type TellProgress } from "./strength-of.ts";
import { strengthGround } from "./strength-plan.ts";
import { besides, StrengthShare } from "./strength-share.ts";
import { swayFactor } from "./sway.ts";
import { governingNames, governsIn, worstOfAll, type WorstFound } from "./worst-found.ts";

/** A helper with what it is to do. */
type Helper = HelpersShare & { readonly thread: ShareElsewhere };

/**
 * What `strengthOf` gives, bit for bit, worked out in this thread and in those that help. Rejects with what stopped a helper.
 * `memory` is left with all that stands on the usual stiffness.
 */
export async function strengthShared(
  scheme: Scheme,
  basis: StrengthBasis,
  memory: StrengthMemory,
  helping: readonly ShareElsewhere[],
  tell: TellProgress = () => undefined,
): Promise<Strength> {
  const helpers = helpersOf(helping);
  const [first] = helpers;
  if (first === undefined) return strengthOf(scheme, basis, memory, tell);
  const ground = strengthGround(scheme, basis);
  if (!ground.accepted) return ground;
  const share = new StrengthShare(ground, basis, memory);
  let done = 0;
  const step = (set: ScreenedSet): ScreenedSet => {
    tell(++done, strengthSteps);
    return set;
  };

  for (const { thread } of helpers) void thread.ask({ work: "take up", scheme: ground.scheme });
  const leaning = first.thread.ask({ work: "leans" });
  const asked = helpers.flatMap(workedAhead);
  for (const id of wholeSets.slice(0, 1)) share.prepare(id);
  const leans = await leaning;
  const enlargement = swayFactor(leans);
  const whole = wholeSets.map((id) => step(share.screened(id, enlargement)));
  const names = governingNames(worstOfAll(whole.map(({ worsts }) => worsts)));
  const resting = screenedRest({ share, helpers, step, enlargement, names });
  const own = ownBesides(share, helpers);
  const rest = await resting;
  const governing = await resultsOf(worstOfAll([...whole, ...rest].map(({ worsts }) => worsts)), share, helpers);
  const beside = [...(await Promise.all(asked)).flat(), ...own];
  return strengthFrom(share, basis, { leans, enlargement, whole, rest, governing, beside });
}

const helpersOf = (threads: readonly ShareElsewhere[]): Helper[] =>
  splitOver(threads.length).flatMap((share, n) => {
    const thread = threads[n];
    return thread === undefined ? [] : [{ ...share, thread }];
  });

/** What hangs on no run: asked for at once, so that no helper waits. */
function workedAhead({ thread, ahead, beside }: Helper): Promise<readonly ElementResult[]>[] {
  const told = beside.map((what) => thread.ask({ work: "beside", what }));
  for (const set of ahead) void thread.ask({ work: "prepare", set });
  return told;
}

type Rest = {
  readonly share: StrengthShare;
  readonly helpers: readonly Helper[];
  readonly step: (set: ScreenedSet) => ScreenedSet;
  readonly enlargement: number;
  readonly names: ReadonlySet<string>;
};

/** Helpers are asked before this thread does its own. */
function screenedRest({ share, helpers, step, enlargement, names }: Rest): Promise<ScreenedSet[]> {
  const elsewhere = new Map(
    helpers.flatMap(({ thread, sets }) =>
      sets.map((set) => [set, thread.ask({ work: "screened", set, enlargement, names }).then(step)] as const),
    ),
  );
  const own = (id: AssumptionId) => Promise.resolve(step(share.screened(id, enlargement, names)));
  return Promise.all(restSets.map((id) => elsewhere.get(id) ?? own(id)));
}

/** The working of each part where the run that governs it was solved. */
async function resultsOf(
  worsts: readonly WorstFound[],
  share: StrengthShare,
  helpers: readonly Helper[],
): Promise<ElementResult[]> {
  const governedIn = (sets: readonly string[]) => worsts.filter((worst) => sets.includes(governsIn(worst).assumptions));
  const elsewhere = helpers.map(({ thread, sets }) => thread.ask({ work: "results", worsts: governedIn(sets) }));
  const away = new Set(helpers.flatMap(({ sets }) => sets));
  const own = share.results(worsts.filter((worst) => !away.has(governsIn(worst).assumptions)));
  const results = new Map([...(await Promise.all(elsewhere)).flat(), ...own].map((result) => [result.id, result]));
  return worsts.flatMap(({ partId }) => results.get(partId) ?? []);
}

function ownBesides(share: StrengthShare, helpers: readonly Helper[]): ElementResult[] {
  const away = new Set(helpers.flatMap(({ beside }) => beside));
  return besides.filter((what) => !away.has(what)).flatMap((what) => share.beside(what));
}
