import type { CostBook, Operation, RemedyStep, Scheme } from "@cornerway/schema";
import { assess } from "./assess.ts";
import { premium } from "./cost/premium.ts";
import { remediesOf, type RemedyAnswer } from "./remedies/remedies-of.ts";
import { strengthBasisFor } from "./strength.ts";
import { strengthMemory } from "./strength/strength-memory.ts";
import { strengthOf } from "./strength/strength-of.ts";

/** Draws operations on a scheme; undefined where it would not take them. */
export type Draw = (scheme: Scheme, operations: readonly Operation[]) => Scheme | undefined;

/**
 * The ways to settle a mark of a scheme, as they are found: each proved by load path and strength of the whole building, priced
 * by the book, cheapest first. Screening. `draw` is the schema's own application of operations. Throws a RangeError for a mark
 * the scheme does not have, or without containers.
 */
export function remedies(
  scheme: Scheme,
  markId: string,
  book: CostBook,
  draw: Draw,
): Generator<RemedyStep, RemedyAnswer> {
  const memory = strengthMemory();
  const judge = (tried: Scheme) => strengthOf(tried, strengthBasisFor(tried.site.edition), memory);
  return remediesOf(scheme, markId, { draw, assess, judge, premium, book });
}
