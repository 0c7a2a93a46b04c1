import type { CostBook, Operation, RemedyStep, Scheme } from "@cornerway/schema";
import { assess } from "./assess.ts";
import { premium } from "./cost/premium.ts";
import { NOT_ENLARGED } from "./remedies/looks-ahead.ts";
import { remediesOf, type RemedyAnswer } from "./remedies/remedies-of.ts";
import type { RemedyWork } from "./remedies/remedy-work.ts";
import { strengthBasisFor } from "./strength.ts";
import { nameOf, saidOf, type KnownRun } from "./strength/known-run.ts";
import { strengthLive, type GoverningVectors } from "./strength/live-strength.ts";
import type { SharedWork } from "./strength/shared-work.ts";
import { strengthMemory } from "./strength/strength-memory.ts";
import type { Strength } from "./strength/strength-of.ts";
import { strengthShared } from "./strength/strength-shared.ts";

/** Draws operations on a scheme; undefined where it would not take them. */
export type Draw = (scheme: Scheme, operations: readonly Operation[]) => Scheme | undefined;

/**
 * Searches one after the other: what is known of a scheme is kept for the next mark of it. `known`: its full run, where that has
 * been; the list is the same without.
 */
export type RemedySearch = (
  scheme: Scheme,
  markId: string,
  book: CostBook,
  known?: KnownRun,
) => Generator<RemedyStep, RemedyAnswer>;

/**
 * The ways to settle a mark of a scheme, as they are found: each proved by load path and strength of the whole building, priced
 * by the book, cheapest first. Screening. `draw` is the schema's own application of operations. Throws a RangeError for a mark
 * the scheme does not have, or without containers.
 */
export const remedies = (
  scheme: Scheme,
  markId: string,
  book: CostBook,
  draw: Draw,
  known?: KnownRun,
): Generator<RemedyStep, RemedyAnswer> => remedySearch(draw)(scheme, markId, book, known);

/** Searches that share one memory. */
export function remedySearch(draw: Draw): RemedySearch {
  const searching = searches(draw);
  return (scheme, markId, book, known) =>
    stepsOf(searching({ scheme, markId, book, helping: 0, ...(known && { known }) }));
}

/** The same lists, shared with so many helpers; `tell` is told each step. */
export type RemedySearchShared = (asked: RemediesAsked, tell: (step: RemedyStep) => void) => SharedWork<RemedyAnswer>;

export function remedySearchShared(draw: Draw): RemedySearchShared {
  const searching = searches(draw);
  return (asked, tell) => toldSteps(searching(asked), tell);
}

export type RemediesAsked = {
  readonly scheme: Scheme;
  readonly markId: string;
  readonly book: CostBook;
  /** The full run of the scheme, where that has been. */
  readonly known?: KnownRun;
  readonly helping: number;
};

function searches(draw: Draw): (asked: RemediesAsked) => RemedyWork<RemedyAnswer> {
  const memory = strengthMemory();
  let last: { readonly name: string; readonly asIs: Strength } | undefined;
  return ({ scheme, markId, book, known, helping }) => {
    const judge = (drawn: Scheme): SharedWork<Strength> =>
      strengthShared(drawn, strengthBasisFor(drawn.site.edition), memory, helping);
    function* judgeAsIs(drawn: Scheme): SharedWork<Strength> {
      const name = nameOf(drawn);
      if (last?.name !== name) last = { name, asIs: saidOf(drawn, known) ?? (yield* judge(drawn)) };
      return last.asIs;
    }
    const look = (drawn: Scheme, governed: GoverningVectors) =>
      strengthLive(drawn, strengthBasisFor(drawn.site.edition), memory, governed, NOT_ENLARGED);
    return remediesOf(scheme, markId, { draw, assess, judgeAsIs, judge, look, helping, premium, book });
  };
}

/** The steps of a search that nobody helps. */
function* stepsOf(work: RemedyWork<RemedyAnswer>): Generator<RemedyStep, RemedyAnswer> {
  for (;;) {
    const next = work.next();
    if (next.done === true) return next.value;
    if (!("kind" in next.value)) throw new Error("a search without helpers asks nobody");
    yield next.value;
  }
}

/** What is left of a search once its steps are told: what it asks of helpers. */
function* toldSteps(work: RemedyWork<RemedyAnswer>, tell: (step: RemedyStep) => void): SharedWork<RemedyAnswer> {
  let next = work.next();
  while (next.done !== true) {
    const step = next.value;
    if ("kind" in step) tell(step);
    next = work.next("kind" in step ? undefined : yield step);
  }
  return next.value;
}
