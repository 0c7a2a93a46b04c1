import type { Certainty, Mark, MarkFact, PointMm, Verdict } from "@cornerway/schema";
import { rounded } from "../units.ts";

/** What a mark is made of. `elements` are most concerned first; the first `named` of them, with `part`, are its name. */
export type MarkParts = {
  readonly fact: MarkFact;
  readonly verdict: Verdict;
  readonly certainty: Certainty;
  readonly elements: readonly string[];
  /** How many of the elements make its identity; the others only stand near. Default all. */
  readonly named?: number;
  /** Tells apart marks of one kind on the same elements. */
  readonly part?: string;
  readonly at: PointMm;
  readonly basis: string;
};

/** A mark whose identity is its kind and element ids, so that it is found again in the next revision. */
export function markOf({ fact, verdict, certainty, elements, named, part, at, basis }: MarkParts): Mark {
  const names = elements.slice(0, named ?? elements.length).join("+");
  return {
    id: `${fact.kind}:${names}${part === undefined ? "" : `:${part.replaceAll(" ", "-")}`}`,
    verdict,
    certainty,
    elements: elements.filter((id, index) => elements.indexOf(id) === index),
    at: { xMm: rounded(at.xMm), yMm: rounded(at.yMm), zMm: rounded(at.zMm) },
    fact,
    basis,
  };
}
