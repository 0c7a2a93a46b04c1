import type { Scheme, Verdict } from "@cornerway/schema";
import type { ElementResult } from "../strength/element-result.ts";
import type { StrengthMemory } from "../strength/solve-runs.ts";
import type { StrengthBasis } from "../strength/strength-basis.ts";
import type { StrengthReason } from "../strength/strength-reason.ts";
import { strengthOf, type Strength } from "../strength/strength-of.ts";
import type { ChartAnswer, ChartRefusal, ChartRequest } from "./chart.ts";
import type { Place } from "./chart-side.ts";
import { addedBy, type Judged } from "./judged.ts";
import { bareEdged, withTried, without } from "./trial-opening.ts";

/** One place and width under every run and every set of assumptions, on its own loads, every part of the building checked. */
export type Confirmation = {
  readonly accepted: true;
  /** What the opening adds. */
  readonly answer: ChartAnswer;
  /** The unit with it, whatever the cause. */
  readonly unit: Verdict;
  /** Every part of the building with its working, most used first. */
  readonly results: readonly ElementResult[];
};

/** Framed only where it must be: with bare edges where that works. */
export function confirmPlace(
  scheme: Scheme,
  request: ChartRequest,
  place: Place,
  basis: StrengthBasis,
  memory: StrengthMemory,
): Confirmation | ChartRefusal {
  const whole = (asked: ChartRequest): Confirmation | ChartRefusal => confirmed(scheme, asked, place, basis, memory);
  if (request.framedWhereNeeded !== true) return whole(request);
  const bare = whole(bareEdged(request));
  return !bare.accepted || bare.answer.why.kind === "within" ? bare : whole(request);
}

function confirmed(
  scheme: Scheme,
  request: ChartRequest,
  { centreMm, widthMm }: Place,
  basis: StrengthBasis,
  memory: StrengthMemory,
): Confirmation | ChartRefusal {
  const before = strengthOf(without(scheme, request), basis, memory);
  const after = strengthOf(withTried(scheme, request, centreMm, widthMm), basis, memory);
  if (!before.accepted) return before;
  if (!after.accepted) return after;
  const id = request.containerId;
  const answer = addedBy(judgedIn(after, id), judgedIn(before, id), id, request.framed);
  const unit = after.units.find(({ unitId }) => unitId === id)?.verdict ?? "not checked";
  return { accepted: true, answer, unit, results: after.results };
}

/** What a strength run found, as charts and remedies compare it. */
export function judgedIn(
  { results, holds, units, refusedRuns }: Extract<Strength, { accepted: true }>,
  unitId: string,
): Judged {
  const reasons = units.find((unit) => unit.unitId === unitId)?.reasons ?? [];
  return {
    results,
    holds,
    fallen: refusedRuns.flatMap(({ run, held }) => (held === undefined ? [run] : [])),
    leftOut: reasons.filter((reason) => !("partId" in reason) && !apart.includes(reason.kind)),
  };
}

/** Told by holds and by runs that fell. */
const apart: readonly StrengthReason["kind"][] = ["hold not drawn", "moves", "runs without equilibrium"];
