import type { ActionCase } from "./action-case.ts";
import type { DesignBasis } from "./design-basis.ts";
import {
  expandCombination,
  gravityOnly,
  type EarthquakeFactors,
  type ExpandedCombination,
} from "./expanded-combination.ts";
import { combinationText, type CombinationLevel, type LoadCombination } from "./load-combination.ts";
import type { LoadSymbol } from "./load-symbol.ts";
import { RecentlyMade } from "../numerics/recently-made.ts";

/** One vector of an analysis: how often each action case counts, and the combination it stands for. */
export type DesignRun = {
  readonly id: string;
  readonly combination: LoadCombination;
  readonly factors: Readonly<Record<string, number>>;
};

/** The cases there are, by what they multiply. Dead load comes at its heaviest, at its least, and of units as they arrive. */
export type RunCases = {
  readonly deadMost: ActionCase;
  readonly deadLeast: ActionCase;
  readonly deadBare: ActionCase;
  /** Everywhere first, then the patterns. */
  readonly imposed: readonly ActionCase[];
  readonly roofLive: readonly ActionCase[];
  readonly snow: readonly ActionCase[];
  readonly wind: readonly ActionCase[];
  readonly earthquake: readonly ActionCase[];
  readonly movements: readonly ActionCase[];
};

export type RunRequest = {
  readonly level: CombinationLevel;
  readonly halfCompanionLive: boolean;
  readonly overstrength: boolean;
  readonly earthquake: EarthquakeFactors;
};

/**
 * Every combination with every case it has to be tried with. Least dead load where its factor is under 1, in wind that of bare
 * units: what pulls or slides does so most before the fit-out, and what presses is run with the heaviest; imposed
 * patterns where imposed load leads, elsewhere it is everywhere or nowhere; every roof case; as the leading action
 * every wind case, as a companion the unturned ones; movements of supports beside the combination of gravity loads with
 * imposed load everywhere. These choices are common practice, no published source.
 */
export function designRuns(cases: RunCases, basis: DesignBasis, request: RunRequest): readonly DesignRun[] {
  const known = asked.get(basis) ?? new RecentlyMade<readonly DesignRun[]>(LISTS_KEPT);
  asked.set(basis, known);
  return known.take(JSON.stringify([namesOf(cases), request]), () => runsUnder(cases, basis, request));
}

/** Runs name their cases and hold nothing of them, so an edit that leaves the names leaves the runs. */
const asked = new WeakMap<DesignBasis, RecentlyMade<readonly DesignRun[]>>();
/** At both levels, and with overstrength, of a scheme before and after an edit. */
const LISTS_KEPT = 6;

const namesOf = ({ deadMost, deadLeast, deadBare, imposed, roofLive, snow, wind, earthquake, movements }: RunCases) =>
  [[deadMost], [deadLeast], [deadBare], imposed, roofLive, snow, wind, earthquake, movements].map((cases) =>
    cases.map(({ id }) => id),
  );

function runsUnder(cases: RunCases, basis: DesignBasis, request: RunRequest): DesignRun[] {
  const { level, halfCompanionLive, overstrength } = request;
  const combinations = basis.combinations({ level, present: presentIn(cases), halfCompanionLive, overstrength });
  return combinations.flatMap((combination) => runsOf(cases, expandCombination(combination, request.earthquake)));
}

const presentIn = (cases: RunCases): Set<LoadSymbol> =>
  new Set<LoadSymbol>([
    "D",
    ...(cases.imposed.length > 0 ? (["L"] as const) : []),
    ...(cases.roofLive.length > 0 ? (["Lr"] as const) : []),
    ...(cases.snow.length > 0 ? (["S"] as const) : []),
    ...(cases.wind.length > 0 ? (["W"] as const) : []),
    ...(cases.earthquake.length > 0 ? (["Eh"] as const) : []),
  ]);

type Chosen = readonly (readonly [ActionCase, number])[];

function runsOf(cases: RunCases, expanded: ExpandedCombination): DesignRun[] {
  const { combination } = expanded;
  const dead: Chosen = [[deadFor(expanded, cases), expanded.dead]];
  const [everywhere] = cases.imposed;
  const choices: readonly (readonly Chosen[])[] = [
    [dead],
    liveChoices(cases, expanded),
    each(cases.roofLive, expanded.roofLive),
    each(cases.snow, expanded.snow),
    each(windsFor(cases.wind, combination), expanded.wind),
    each(cases.earthquake, expanded.earthquake),
  ];
  const chosen = choices.reduce<readonly Chosen[]>(
    (sofar, next) => sofar.flatMap((one) => next.map((more) => [...one, ...more])),
    [[]],
  );
  const moved = chosen
    .filter((one) => gravityOnly(combination) && expanded.live > 0 && one.some(([action]) => action === everywhere))
    .flatMap((one) => cases.movements.map((movement): Chosen => [...one, [movement, expanded.movement]]));
  return [...chosen, ...moved].map((one) => runOf(combination, one));
}

function deadFor({ dead, wind }: ExpandedCombination, { deadMost, deadLeast, deadBare }: RunCases): ActionCase {
  if (dead >= 1) return deadMost;
  return wind > 0 ? deadBare : deadLeast;
}

const each = (cases: readonly ActionCase[], factor: number): readonly Chosen[] =>
  factor === 0 || cases.length === 0 ? [[]] : cases.map((action) => [[action, factor]]);

/** Imposed load leads in gravity combinations where nothing on the roof has the larger part. */
function liveChoices(cases: RunCases, expanded: ExpandedCombination): readonly Chosen[] {
  if (expanded.live === 0) return [[]];
  const leads = gravityOnly(expanded.combination) && expanded.live >= Math.max(expanded.snow, expanded.roofLive);
  return [...each(leads ? cases.imposed : cases.imposed.slice(0, 1), expanded.live), ...(leads ? [] : [[]])];
}

/** Under half factor the wind is a companion of a roof load: its turned cases are left to the rows where it leads. */
function windsFor(winds: readonly ActionCase[], combination: LoadCombination): readonly ActionCase[] {
  const companion =
    combination.level === "strength" && combination.terms.some(({ symbol, factor }) => symbol === "W" && factor < 1);
  return companion
    ? winds.filter(({ id }) => !id.endsWith("clockwise inside pressure") && !id.endsWith("clockwise inside suction"))
    : winds;
}

function runOf(combination: LoadCombination, chosen: Chosen): DesignRun {
  const named = chosen.map(([{ id }]) => id).join(", ");
  return {
    id: `${combinationText(combination)}: ${named}`,
    combination,
    factors: Object.fromEntries(chosen.map(([{ id }, factor]) => [id, factor])),
  };
}
