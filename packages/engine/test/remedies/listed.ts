import {
  applyOperations,
  demoCostBook,
  type Operation,
  type RemedyList,
  type RemedyStep,
  type Scheme,
} from "@cornerway/schema";
import { remedySearch } from "../../src/remedies.ts";
import type { KnownRun } from "../../src/strength/known-run.ts";

/** A scheme with operations drawn, as the draft draws them. */
export function drawn(scheme: Scheme, operations: readonly Operation[]): Scheme {
  const applied = applyOperations(scheme, [...operations]);
  if (!applied.ok) throw new Error(`cannot be drawn: ${JSON.stringify(applied.refusal)}`);
  return applied.scheme;
}

/** The search for one mark to its end, with the steps it told. */
export function listed(
  scheme: Scheme,
  markId: string,
  search = searching(scheme, markId),
): { readonly list: RemedyList; readonly steps: RemedyStep[] } {
  const steps: RemedyStep[] = [];
  for (;;) {
    const next = search.next();
    if (next.done !== true) steps.push(next.value);
    else if (next.value.accepted) return { list: next.value.list, steps };
    else throw new Error("gravity alone has no hazards to refuse");
  }
}

/** The list for one mark of a scheme, searched for once however many tests read it. */
export function listOf(scheme: Scheme, markId: string): RemedyList {
  const list = lists.get(scheme)?.get(markId) ?? listed(scheme, markId).list;
  lists.set(scheme, new Map(lists.get(scheme)).set(markId, list));
  return list;
}

const lists = new WeakMap<Scheme, ReadonlyMap<string, RemedyList>>();

/** The search itself, step by step. One memory for all: containers that are alike are condensed once. */
export const searching = (scheme: Scheme, markId: string) => search(scheme, markId, demoCostBook);

/** The same on a memory of its own, with what the full run of the scheme said. */
export const searchingWith = (known: KnownRun, scheme: Scheme, markId: string) =>
  remedySearch(drawOn)(scheme, markId, demoCostBook, known);

export function drawOn(tried: Scheme, operations: readonly Operation[]): Scheme | undefined {
  const applied = applyOperations(tried, [...operations]);
  return applied.ok ? applied.scheme : undefined;
}

const search = remedySearch(drawOn);
