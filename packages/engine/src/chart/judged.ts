import type { Verdict } from "@cornerway/schema";
import { governing } from "../checks/check.ts";
import { coverageOf } from "../checks/coverage.ts";
import type { ElementResult } from "../strength/element-result.ts";
import type { HoldNeeded } from "../strength/holds-needed.ts";
import { governingOf, type PartWorst } from "../strength/screen.ts";
import type { StrengthReason } from "../strength/strength-reason.ts";
import { alsoAsSure } from "../strength/sure-part.ts";
import { unitStrength } from "../strength/unit-strength.ts";
import type { ChartAnswer, ChartReason } from "./chart.ts";

/** What was found of the parts of a building with one opening, or without it. */
export type Judged = {
  readonly results: readonly Finding[];
  readonly holds: readonly HoldNeeded[];
  /** Runs that stood and no longer do. */
  readonly fallen: readonly string[];
  /** Reasons that lie in no part: what the model leaves out, walls that no longer count. */
  readonly leftOut: readonly StrengthReason[];
};

/** A result without its working. */
export type Finding = Omit<ElementResult, "ifProved" | "certainty" | "working">;

/** What governs a part, without workings: they are made for answers that are confirmed. */
export function findingOf(worst: PartWorst): Finding {
  const { part, envelope, heldDown } = worst;
  const { screened, solved, use } = governingOf(worst);
  const { id, ownerId, element, place, sureOf } = part;
  const { limitState } = screened;
  const { coverage, why } = coverageOf(limitState, element);
  const refused = Number.isFinite(use) ? undefined : governing(screened.checks());
  return {
    id,
    ownerId,
    element,
    place,
    limitState,
    ...(Number.isFinite(use) && { utilisation: use }),
    ...(refused?.ok === false && { refused: refused.why }),
    ...(screened.upper !== undefined && Number.isFinite(screened.upper) && { upperBound: screened.upper }),
    governingRun: solved.run.id,
    assumptions: solved.set.id,
    held: solved.held,
    envelope: Object.fromEntries([...envelope].map(([set, value]) => [set, Number.isFinite(value) ? value : null])),
    ...(heldDown && { ifHeldDown: Number.isFinite(heldDown.use) ? heldDown.use : null }),
    covered: sureOf === undefined ? coverage : "checked",
    ...(sureOf !== undefined && { sureOf }),
    ...(why !== undefined && { coveredWhy: why }),
  };
}

/**
 * What an opening adds: the verdict on parts, holds and runs that are new, worse, or no longer within their strength with it.
 * What stands against the building already is not laid on the opening; the chart says it beside.
 */
export function addedBy(judged: Judged, before: Judged, unitId: string, withSteel: boolean): ChartAnswer {
  const added = addedParts(judged, before);
  const [fallen] = judged.fallen.filter((run) => !before.fallen.includes(run));
  const { verdict, reasons } = unitStrength({
    unitId,
    // a unit in which nothing is worse is judged by what there is
    results: added,
    holds: addedHolds(judged, before),
    refused: [],
    runs: 0,
    withSteel,
    given: addedReasons(judged, before),
  });
  const why = gravestReason(reasons, judged.results);
  if (fallen !== undefined && verdict !== "does not work")
    return { verdict: "needs the engineer", why: { kind: "no equilibrium", run: fallen } };
  if (why !== undefined) return { verdict, why };
  const nearest = greatest(added) ?? greatest(judged.results);
  if (nearest === undefined) throw new RangeError(`nothing of ${unitId} is checked`);
  const { id, utilisation, governingRun } = nearest;
  const works: Verdict = withSteel ? "works with steel" : "works as built";
  return { verdict: works, why: { kind: "within", partId: id, use: utilisation ?? 0, run: governingRun } };
}

/** Parts that are new, worse, or no longer within their strength. */
export function addedParts({ results }: Judged, before: Judged): Finding[] {
  const known = strengthBefore(before);
  return results.filter((result) => isWorse(result, known));
}

export const addedReasons = (judged: Pick<Judged, "leftOut">, before: Pick<Judged, "leftOut">): StrengthReason[] =>
  judged.leftOut.filter((reason) => !before.leftOut.some((known) => JSON.stringify(known) === JSON.stringify(reason)));

export const addedHolds = ({ holds }: Judged, before: Judged): HoldNeeded[] =>
  holds.filter((hold) => isNewHold(hold, before.holds));

/** A part counts as worse from this share on: less is a shift of load between equals. Judged, no published source. */
export const WORSE = 1.02;

/** What a building without the opening is compared by is found once. */
const strengths = new WeakMap<Judged, ReadonlyMap<string, number>>();

/** Greatest use before of each part, and of all parts of one kind in one wall, since openings divide them anew. */
function strengthBefore(before: Judged): ReadonlyMap<string, number> {
  const known = strengths.get(before) ?? strengthsIn(before);
  strengths.set(before, known);
  return known;
}

function strengthsIn({ results }: Judged): ReadonlyMap<string, number> {
  const known = new Map<string, number>();
  const note = (key: string, use: number): void => void known.set(key, Math.max(known.get(key) ?? 0, use));
  for (const result of results.flatMap(alsoAsSure)) {
    note(result.id, useOf(result));
    note(kindOf(result), useOf(result));
  }
  return known;
}

/** Frames belong to one opening; all else of a wall is divided by openings into stretches. */
export function kindOf({ ownerId, element, place, id, sureOf }: Finding): string {
  if (element === "jamb" || element === "added beam" || element === "added post") return id;
  const [wall = ""] = place.split(/ over | \d/);
  return `${ownerId} ${element} ${wall}${sureOf === undefined ? "" : ", what is sure"}`;
}

function isWorse(result: Finding, known: ReadonlyMap<string, number>): boolean {
  const before = known.get(result.id) ?? known.get(kindOf(result));
  if (before === undefined) return true;
  const use = useOf(result);
  return use > before * WORSE || (use > 1 && before <= 1);
}

/** As drawn, or once held: whichever is greater. */
function useOf({ utilisation, ifHeldDown, refused, held }: Finding): number {
  const drawn = refused === undefined ? (utilisation ?? 0) : Infinity;
  return held.length > 0 || ifHeldDown === undefined ? drawn : Math.max(drawn, ifHeldDown ?? Infinity);
}

const isNewHold = (hold: HoldNeeded, before: readonly HoldNeeded[]): boolean =>
  !before.some(
    (one) =>
      one.kind === hold.kind &&
      one.ownerId === hold.ownerId &&
      hold.forceN <= Math.max(one.forceN * WORSE, one.forceN + NEWTON),
  );

const NEWTON = 1;

const greatest = (results: readonly Finding[]): Finding | undefined =>
  results.reduce<Finding | undefined>(
    (worst, next) => (worst === undefined || (next.utilisation ?? 0) > (worst.utilisation ?? 0) ? next : worst),
    undefined,
  );

type PartReason = Extract<ChartReason, { kind: "part" }>["because"];

const becauses: Partial<Record<StrengthReason["kind"], PartReason>> = {
  over: "over",
  "beyond its bound": "beyond its bound",
  "assumption decides": "assumption decides",
  "strength refused": "refused",
  "not covered": "not covered",
  "over if held down": "over once held",
};

/** The reason that decides a verdict; undefined where there is none. `results` hold the parts they name. */
export function gravestReason(
  reasons: readonly StrengthReason[],
  results: readonly Finding[],
): ChartReason | undefined {
  const found = new Map(results.map((result) => [result.id, result]));
  return reasons.map((reason) => chartReason(reason, found)).toSorted(gravest)[0];
}

function chartReason(reason: StrengthReason, found: ReadonlyMap<string, Finding>): ChartReason {
  if (reason.kind === "hold not drawn") return { kind: "hold not drawn", hold: reason.hold };
  if (reason.kind === "left out of the model") return { kind: "left out of the model", what: reason.note.kind };
  const because = becauses[reason.kind];
  const result = "partId" in reason ? found.get(reason.partId) : undefined;
  if (because === undefined || result === undefined) return { kind: "left out of the model", what: reason.kind };
  const { id, governingRun, assumptions } = result;
  const least = Math.min(...Object.values(result.envelope).map((use) => use ?? Infinity));
  return {
    ...{ kind: "part", because, partId: id, use: useOf(result), run: governingRun, assumptions },
    ...(because !== "refused" && Number.isFinite(least) && { least }),
  };
}

/** What makes the verdict worst first, then the greatest use. */
function gravest(a: ChartReason, b: ChartReason): number {
  const rank = (reason: ChartReason): number =>
    reason.kind === "hold not drawn" ? 3 : reason.kind === "part" ? (reason.because === "over" ? 2 : 1) : 0;
  const use = (reason: ChartReason): number => ("use" in reason ? reason.use : 0);
  return rank(b) - rank(a) || (use(b) === use(a) ? 0 : use(b) - use(a));
}
