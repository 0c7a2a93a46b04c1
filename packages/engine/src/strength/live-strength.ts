import type { Scheme } from "@cornerway/schema";
import type { CheckedElement } from "../checks/limit-state.ts";
import type { HazardRefusal } from "../loads/hazard-refusal.ts";
import { gravityOnly } from "../loads/expanded-combination.ts";
import { assumptionSets, type AssumptionId, type AssumptionSet } from "./assumption-sets.ts";
import { checkedParts } from "./checked-parts.ts";
import { buildModel } from "../model/build-model.ts";
import { LastMade } from "../numerics/last-made.ts";
import { imposedEverywhere } from "../loads/imposed-cases.ts";
import { andGravityAlone } from "./gravity-alone.ts";
import { isForOwner } from "./screen.ts";
import { solveSettling } from "./settling.ts";
import { inThisOrder, type SolvedSet, type StrengthMemory } from "./solve-runs.ts";
import { worstOfFew, type WorstOfFew } from "./worst-of-few.ts";
import { OwnInsides } from "./own-forces.ts";
import { partsMadeWith } from "./parts-made.ts";
import type { CombinationLevel } from "../loads/load-combination.ts";
import type { StrengthBasis } from "./strength-basis.ts";
import type { Strength } from "./strength-from.ts";
import type { StrengthPart } from "./strength-part.ts";
import { strengthPlan, type StrengthPlan } from "./strength-plan.ts";
import { isTold } from "./sure-part.ts";
import type { StrengthRun } from "./run-plan.ts";

/** Runs that governed the parts of each owner in a full run, by set of assumptions. */
export type GoverningVectors = ReadonlyMap<AssumptionId, ReadonlyMap<string, ReadonlySet<string>>>;

/** A part under the vectors looked at. It says nothing of those that were not. */
export type LivePart = {
  readonly id: string;
  readonly ownerId: string;
  readonly element: CheckedElement;
  readonly place: string;
  /** The part of which it tells what is sure. */
  readonly sureOf?: string;
  /** Greatest utilisation; null where a strength that acts is refused. */
  readonly utilisation: number | null;
  readonly run: string;
  readonly assumptions: AssumptionId;
  /** What has to be held for this run to stand; empty where it stands as drawn. */
  readonly held: readonly string[];
};

/** What can be said at once. It is no verdict: it waits for the full run. */
export type LiveStrength =
  | { readonly accepted: false; readonly refusals: readonly HazardRefusal[] }
  | {
      readonly accepted: true;
      readonly waitsFor: "the full run";
      /** Every vector looked at, set by set. */
      readonly looked: readonly { readonly assumptions: AssumptionId; readonly runs: readonly string[] }[];
      /** Vectors of the full run that were not looked at, over its sets solved for every run; the others wait as a whole. */
      readonly notLooked: number;
      readonly setsWaiting: readonly AssumptionId[];
      /** Worst first, refused ones before all. */
      readonly parts: readonly LivePart[];
      /** Runs looked at that do not stand as drawn. */
      readonly withoutEquilibrium: number;
      readonly vectors: number;
      readonly checks: number;
    };

/** The vectors that governed parts in a full run, those of sets solved for every run. */
export function governingVectors({ results }: Extract<Strength, { accepted: true }>): GoverningVectors {
  const vectors = new Map(liveSets.map(({ id }) => [id, new Map<string, Set<string>>()]));
  for (const { assumptions, governingRun, ownerId } of results) {
    const ofSet = vectors.get(assumptions);
    const own = ofSet?.get(ownerId) ?? new Set<string>();
    ofSet?.set(ownerId, own.add(governingRun));
  }
  return vectors;
}

/** What is looked at while one draws: other sets differ little from these and cost a condensation each. */
const liveSets: readonly AssumptionSet[] = assumptionSets.filter(({ solves }) => solves === "every run");

/**
 * Strength under gravity loads, locks at play, and under the vectors that governed the last full run, while one draws: each
 * part under those that governed a part of its owner. `memory` keeps what an edit leaves as it is: containers that did not change are not
 * condensed again. Equal to the full run on these vectors; where an
 * `enlargement` of level loads by the building's lean is given, that of an earlier run, but for that.
 */
export function strengthLive(
  given: Scheme,
  basis: StrengthBasis,
  memory: StrengthMemory,
  governed: GoverningVectors,
  enlargement?: number,
): LiveStrength {
  const plan = strengthPlan(given, basis, memory, enlargement);
  if (!plan.accepted) return plan;
  const { scheme, analysis, cases } = plan;
  const { gravity, chosen } = runsLookedAt(plan, governed);
  const used = new Set(chosen.flatMap(({ runs }) => runs.flatMap(({ factors }) => Object.keys(factors))));
  const built = buildModel(
    analysis,
    cases.filter(({ id }) => used.has(id)),
    {},
  );
  const count = chosen.reduce((sum, { runs }) => sum + runs.length, 0);
  const forThese = count > FEW_RUNS ? memory : { ...memory, fewRuns: new OwnInsides(memory.cache, FABRICS_EDITED) };
  const sets = chosen.map(({ set, runs }) => solveSettling(analysis, cases, runs, set, forThese, built.model));
  const parts = checkedParts(analysis, built, scheme, basis, partsMadeWith(memory));
  const looks = lookFor(parts, sets, governed, gravity);
  const looked = sets.map(vectorsOf);
  const vectors = looked.reduce((sum, { runs }) => sum + runs.length, 0);
  return {
    accepted: true,
    waitsFor: "the full run",
    looked,
    notLooked: plan.runs.length * sets.length - vectors,
    setsWaiting: assumptionSets.filter(({ solves }) => solves !== "every run").map(({ id }) => id),
    parts: looks.worsts.flatMap(livePart).toSorted(worstFirst),
    withoutEquilibrium: sets.reduce((sum, { refused }) => sum + refused.length, 0),
    vectors,
    checks: looks.checks,
  };
}

/** About as many runs as a container has movements of bearing points and loads: so many are cheaper by what each of those causes. */
const FEW_RUNS = 60;

/** An act edits one container, or the two on both sides of a wall. */
const FABRICS_EDITED = 2;

type Plan = Extract<StrengthPlan, { accepted: true }>;

/** Gravity loads with imposed load everywhere, on supports that stay. */
function gravityRuns({ runs, cases }: Plan): ReadonlySet<string> {
  const besides = new Set(
    cases
      .filter(({ id, symbol }) => symbol === "T" || symbol === "N" || (symbol === "L" && id !== imposedEverywhere))
      .map(({ id }) => id),
  );
  return new Set(
    runs
      .filter(
        ({ combination, factors }) => gravityOnly(combination) && !Object.keys(factors).some((id) => besides.has(id)),
      )
      .map(({ id }) => id),
  );
}

type LookedAt = {
  readonly gravity: ReadonlySet<string>;
  readonly chosen: readonly { readonly set: AssumptionSet; readonly runs: readonly StrengthRun[] }[];
};

/** Found once for a list of runs, which names its cases and stays as long as an edit leaves their names. */
const runsLookedAt = (plan: Plan, governed: GoverningVectors): LookedAt =>
  last.take(plan.runs, [governed], () => {
    const gravity = gravityRuns(plan);
    // without level loads it makes little difference how locks hold: gravity is looked at as locks are at first
    const chosen = liveSets.map((set, n) => ({
      set,
      runs: lookedAt(plan, n === 0 ? gravity : new Set(), governed.get(set.id)),
    }));
    return { gravity, chosen };
  });

const last = new LastMade<LookedAt>();

function lookedAt(
  plan: Plan,
  besides: ReadonlySet<string>,
  governed: ReadonlyMap<string, ReadonlySet<string>> = new Map(),
): StrengthRun[] {
  const ids = new Set([...besides, ...[...governed.values()].flatMap((own) => [...own])]);
  return andGravityAlone(
    plan.runs.filter(({ id }) => ids.has(id)),
    plan.runs,
  );
}

/** The parts of each owner under gravity loads and what governed it in each set. */
function lookFor(
  parts: readonly StrengthPart[],
  sets: readonly SolvedSet[],
  governed: GoverningVectors,
  gravity: ReadonlySet<string>,
): { readonly worsts: readonly WorstOfFew[]; readonly checks: number } {
  const byOwner = new Map<string, StrengthPart[]>();
  for (const part of parts) {
    const own = byOwner.get(part.ownerId);
    if (own === undefined) byOwner.set(part.ownerId, [part]);
    else own.push(part);
  }
  let checks = 0;
  const worsts = [...byOwner].flatMap(([ownerId, own]) => {
    const told = own.filter(({ sureOf }) => sureOf === undefined);
    const at = (level: CombinationLevel) => told.filter((part) => part.level === level).length;
    const heldAt = { strength: at("strength"), allowable: at("allowable") };
    const runsOfSets = sets.map(({ set, solved }) => {
      const known = governed.get(set.id)?.get(ownerId);
      const looked = solved.filter(({ run: { id } }) => gravity.has(id) || known?.has(id) === true);
      return inThisOrder(looked).filter(({ run }) => isForOwner(run, ownerId));
    });
    for (const { run } of runsOfSets.flat()) checks += heldAt[run.level];
    return worstOfFew(own, runsOfSets);
  });
  return { worsts, checks };
}

const vectorsOf = ({ set, solved, refused }: SolvedSet) => ({
  assumptions: set.id,
  runs: [
    ...solved.map(({ run }) => run.id),
    ...refused.filter(({ held }) => held === undefined).map(({ run }) => run.id),
  ],
});

function livePart({ part, asDrawn, heldDown }: WorstOfFew): LivePart[] {
  const worst = asDrawn ?? heldDown;
  if (worst === undefined || !isTold(part, asDrawn)) return [];
  const { id, ownerId, element, place, sureOf } = part;
  const { use, solved } = worst;
  const utilisation = Number.isFinite(use) ? use : null;
  return [
    {
      id,
      ownerId,
      element,
      place,
      ...(sureOf !== undefined && { sureOf }),
      utilisation,
      run: solved.run.id,
      assumptions: solved.set.id,
      held: solved.held,
    },
  ];
}

function worstFirst(a: LivePart, b: LivePart): number {
  const [one, other] = [a.utilisation ?? Infinity, b.utilisation ?? Infinity];
  if (one !== other) return other - one;
  return a.id < b.id ? -1 : 1;
}
