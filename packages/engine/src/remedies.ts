import type { CostBook, Operation, RemedyStep, Scheme } from "@cornerway/schema";
import { assess } from "./assess.ts";
import { premium } from "./cost/premium.ts";
import { remediesOf, type RemedyAnswer } from "./remedies/remedies-of.ts";
import { strengthBasisFor } from "./strength.ts";
import { nameOf, saidOf, type KnownRun } from "./strength/known-run.ts";
import { strengthLive, type GoverningVectors } from "./strength/live-strength.ts";
import { strengthMemory } from "./strength/strength-memory.ts";
import { strengthOf, type Strength } from "./strength/strength-of.ts";

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
  const memory = strengthMemory();
  const judge = (scheme: Scheme): Strength => strengthOf(scheme, strengthBasisFor(scheme.site.edition), memory);
  let last: { readonly name: string; readonly asIs: Strength } | undefined;
  return (scheme, markId, book, known) => {
    const judgeAsIs = (drawn: Scheme): Strength => {
      const name = nameOf(drawn);
      if (last?.name !== name) last = { name, asIs: saidOf(drawn, known) ?? judge(drawn) };
      return last.asIs;
    };
    const look = (drawn: Scheme, governed: GoverningVectors) =>
      strengthLive(drawn, strengthBasisFor(drawn.site.edition), memory, governed, NOT_ENLARGED);
    return remediesOf(scheme, markId, { draw, assess, judgeAsIs, judge, look, premium, book });
  };
}

/** A look is never more than the whole run says: it does not ask how the building leans, and enlarges no level load by that. */
const NOT_ENLARGED = 1;
