import type { Mark, RemedyList, Scheme } from "@cornerway/schema";
import { inOrder } from "../geometry/in-order.ts";
import { analyse } from "../load-path/analysis.ts";
import type { HazardRefusal } from "../loads/hazard-refusal.ts";
import { strengthMarks } from "../marks/strength-marks.ts";
import { climb, type Climb } from "./climb.ts";
import { climbsByPrice } from "./climbs-by-price.ts";
import { laddersOf } from "./ladders-of.ts";
import { nearestApart } from "./nearest-apart.ts";
import type { RemedyWork } from "./remedy-work.ts";
import { settleFirst } from "./settle-first.ts";
import { SearchGround, type Accepted } from "./search-ground.ts";
import type { RemedyTools } from "./remedy-tools.ts";

export type RemedyAnswer =
  | { readonly accepted: true; readonly list: RemedyList }
  | { readonly accepted: false; readonly refusals: readonly HazardRefusal[] };

/**
 * Every known way to settle a mark. Each kind of way is a ladder of changes, drawn and held against the load path; the cheapest
 * kind is climbed first: each rung is looked at under the vectors that govern, made good where that is known how, and the first
 * that passes is proved whole and priced. The same list for the same scheme. Throws a RangeError for a mark the scheme does not have.
 */
export function* remediesOf(given: Scheme, markId: string, tools: RemedyTools): RemedyWork<RemedyAnswer> {
  const scheme = inOrder(given);
  const path = tools.assess(scheme);
  const asIs = yield* tools.judgeAsIs(scheme);
  if (!asIs.accepted) return asIs;
  const mark = markIn(markId, path.marks, asIs);
  const ground = new SearchGround(scheme, mark, path, asIs, tools);
  const analysis = analyse(scheme);
  const first = settleFirst(analysis, mark, path.marks);
  if (first.length > 0) return { accepted: true, list: { ...listOf([], ground), settleFirst: first } };
  const climbs = climbsByPrice(laddersOf({ scheme, analysis, mark }), ground);
  for (const [done, one] of climbs.entries())
    yield* climb(one, climbs.slice(done + 1), ground, { done, of: climbs.length });
  yield* nearestApart(climbs, ground);
  return { accepted: true, list: listOf(climbs, ground) };
}

function markIn(markId: string, marks: readonly Mark[], asIs: Accepted): Mark {
  const found = [...marks, ...strengthMarks(asIs, () => NOWHERE)].find(({ id }) => id === markId);
  if (found === undefined) throw new RangeError(`no mark ${markId} in this scheme`);
  return found;
}

const NOWHERE = { xMm: 0, yMm: 0, zMm: 0 };

function listOf(climbs: readonly Climb[], { mark, asIs }: SearchGround): RemedyList {
  const sumOf = (count: (one: Climb) => number): number => climbs.reduce((sum, one) => sum + count(one), 0);
  return {
    markId: mark.id,
    under: asIs.under,
    offered: climbs.flatMap(({ offered }) => offered ?? []).toSorted(cheapestFirst),
    apart: climbs.flatMap(({ offered, apart }) => (offered === null ? (apart ?? []) : [])),
    failed: climbs.flatMap(({ failed }) => failed),
    looked: sumOf(({ looked }) => looked),
    proved: sumOf(({ proved }) => proved),
    leftOut: sumOf(({ rungs }) => rungs.length),
  };
}

type Offered = RemedyList["offered"][number];

const cheapestFirst = (a: Offered, b: Offered): number =>
  (a.premium?.money ?? 0) - (b.premium?.money ?? 0) || (a.id < b.id ? -1 : 1);
