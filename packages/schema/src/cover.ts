import type { Assessment } from "./assessment.ts";
import { canonicalJson } from "./canonical-json.ts";
import { elementById, elementsOf, hangsOn, referencesOf } from "./scheme-collections.ts";
import type { Scheme } from "./scheme.ts";
import { coveredResults, type CoverChange, type Standing } from "./standing.ts";

/** A revision as a judgement sees it; `result` is null while it is not assessed or cannot be read. */
export interface Judged {
  letter: string;
  scheme: Scheme;
  result: Assessment | null;
  /** Elements of which survey or site have found something else than it draws; none unless said. */
  found?: ReadonlySet<string>;
}

type CoveredResult = (typeof coveredResults)[number];

/**
 * How a judgement on an element, given for one revision, stands to the newest. It covers the element and what it hangs on,
 * what hangs on those, what they bear on and bear, all that the engine says of them, and what concerns the scheme as a
 * whole. A force that changes upstream changes the load path or a bearing here, and so is seen.
 */
export function standingOf(elementId: string, given: Judged, newest: Judged): Standing {
  const changed = changeBetween(elementId, given, newest);
  return standing(given, newest, changed);
}

function standing(given: Judged, newest: Judged, changed: CoverChange): Standing {
  const { elements, results, whole, found = [] } = changed;
  const some = elements.length + results.length + whole.length + found.length > 0;
  const state = some ? "stale" : newest.result === null ? "waits" : "stands";
  return { state, revision: given.letter, newest: newest.letter, changed };
}

/** How a judgement on a revision as a whole stands to the newest: it covers every element. */
export function wholeStandingOf(given: Judged, newest: Judged): Standing {
  const ids = new Set([given, newest].flatMap(({ scheme }) => elementsOf(scheme).map(({ id }) => id)));
  const differs = (id: string) => !same(elementById(given.scheme, id), elementById(newest.scheme, id));
  const elements = [...ids].filter(differs).sort();
  const whole = wholeChanged(given, newest);
  return standing(given, newest, { elements, results: [], whole, ...foundOf([...(newest.found ?? [])]) });
}

function changeBetween(elementId: string, given: Judged, newest: Judged): CoverChange {
  const roots = new Set([...rootsOf(given.scheme, elementId), ...rootsOf(newest.scheme, elementId)]);
  const covered = new Set([...coveredBy(given, roots), ...coveredBy(newest, roots)]);
  const differs = (id: string) => !same(elementById(given.scheme, id), elementById(newest.scheme, id));
  return {
    elements: [...covered].filter(differs).sort(),
    results: resultsChanged(roots, given.result, newest.result),
    whole: wholeChanged(given, newest),
    ...foundOf([...covered].filter((id) => newest.found?.has(id))),
  };
}

const foundOf = (ids: readonly string[]): Pick<CoverChange, "found"> =>
  ids.length === 0 ? {} : { found: ids.toSorted() };

/** The element with what it hangs on: the unit of an opening, both units of a seat. */
function rootsOf(scheme: Scheme, id: string): string[] {
  const element = elementById(scheme, id);
  return element === undefined ? [id] : [id, ...referencesOf(element).map((reference) => reference.id)];
}

function coveredBy({ scheme, result }: Judged, roots: ReadonlySet<string>): string[] {
  const hanging = [...roots].flatMap((id) => hangsOn(scheme, id));
  const neighbours = (result?.bearings ?? []).flatMap(({ unitId, onElementId }) =>
    roots.has(unitId) || (onElementId !== undefined && roots.has(onElementId)) ? [unitId, onElementId ?? unitId] : [],
  );
  return [...roots, ...hanging, ...neighbours];
}

function resultsChanged(
  roots: ReadonlySet<string>,
  given: Assessment | null,
  newest: Assessment | null,
): CoveredResult[] {
  if (given === null || newest === null) return [];
  return coveredResults.filter((kind) => !same(said[kind](given, roots), said[kind](newest, roots)));
}

/** What an assessment says of these elements, by kind. */
const said: Record<CoveredResult, (result: Assessment, roots: ReadonlySet<string>) => unknown> = {
  verdict: ({ units }, roots) => units.filter(({ id }) => roots.has(id)),
  bearings: ({ bearings }, roots) =>
    bearings.filter(
      ({ unitId, onElementId }) => roots.has(unitId) || (onElementId !== undefined && roots.has(onElementId)),
    ),
  "load path": ({ path }, roots) => path.filter(({ elementId }) => roots.has(elementId)),
  reactions: ({ statics }, roots) => statics.reactions.filter(({ elementId }) => roots.has(elementId)),
  marks: ({ marks }, roots) => marks.filter(({ elements }) => elements.some((id) => roots.has(id))),
};

function wholeChanged(given: Judged, newest: Judged): CoverChange["whole"] {
  const [before, after] = [given.result, newest.result];
  return [
    ...(same(given.scheme.site, newest.scheme.site) ? [] : ["site and code edition" as const]),
    ...(same(given.scheme.basis, newest.scheme.basis) ? [] : ["design basis" as const]),
    ...(before === null ? ["result cannot be read" as const] : []),
    ...(before !== null && after !== null && before.engineVersion !== after.engineVersion
      ? ["engine version" as const]
      : []),
  ];
}

/** `undefined` is an element that is not there. */
const same = (one: unknown, other: unknown): boolean => textOf(one) === textOf(other);
const textOf = (value: unknown): string => (value === undefined ? "" : canonicalJson(value));
