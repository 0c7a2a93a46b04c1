import { canonicalJson } from "./canonical-json.ts";
import type { DesignBasis } from "./design-basis.ts";
import { collectionNames, referencesOf, type CollectionName, type SchemeElement } from "./scheme-collections.ts";
import type { Scheme, Site } from "./scheme.ts";

/** One element that is not the same in two schemes. The missing side is null: set since, or taken away. */
export type ElementChange = {
  id: string;
  collection: CollectionName;
  before: SchemeElement | null;
  after: SchemeElement | null;
  /** What was set or taken away with it, because it hangs on it. */
  with: readonly SchemeElement[];
};

/** Two values of one thing. */
export type Pair<T> = { before: T; after: T };

export type SchemeComparison = {
  elements: readonly ElementChange[];
  /** Null where the two are the same. */
  site: Pair<Site> | null;
  basis: Pair<DesignBasis> | null;
};

/**
 * What is not the same in two schemes, element by element, list by list. What hangs on an element that was set or taken
 * away comes and goes with it and is no change of its own.
 */
export function compareSchemes(before: Scheme, after: Scheme): SchemeComparison {
  const changes = collectionNames.flatMap((name) => changesOf(name, before[name], after[name]));
  return {
    elements: joinHanging(changes),
    site: pairOf(before.site, after.site),
    basis: pairOf(before.basis, after.basis),
  };
}

type Change = Omit<ElementChange, "with">;

function changesOf(
  collection: CollectionName,
  before: readonly SchemeElement[],
  after: readonly SchemeElement[],
): Change[] {
  const was = new Map(before.map((element) => [element.id, element]));
  const is = new Set(after.map(({ id }) => id));
  const changed = after.flatMap((element): Change[] => {
    const old = was.get(element.id) ?? null;
    return old !== null && same(old, element) ? [] : [{ id: element.id, collection, before: old, after: element }];
  });
  const gone = before.filter(({ id }) => !is.has(id));
  return [...changed, ...gone.map((element) => ({ id: element.id, collection, before: element, after: null }))];
}

/** Each change that stands by itself, with what came or went because it hangs on it. */
function joinHanging(changes: readonly Change[]): ElementChange[] {
  const byId = new Map(changes.map((change) => [change.id, change]));
  const hostOf = (change: Change): Change | undefined => {
    const element = wholeElement(change);
    if (element === null) return undefined;
    return referencesOf(element)
      .map(({ id }) => byId.get(id))
      .find((host) => host !== undefined && wayOf(host) === wayOf(change));
  };
  const hanging = new Map<string, SchemeElement[]>();
  const alone = changes.filter((change) => {
    const host = rootOf(change, hostOf);
    const element = wholeElement(change);
    if (host === change || element === null) return true;
    hanging.set(host.id, [...(hanging.get(host.id) ?? []), element]);
    return false;
  });
  return alone.map((change) => ({ ...change, with: hanging.get(change.id) ?? [] }));
}

function rootOf(change: Change, hostOf: (change: Change) => Change | undefined): Change {
  const host = hostOf(change);
  return host === undefined ? change : rootOf(host, hostOf);
}

/** An element that is wholly new or wholly gone; null for one that only changed. */
const wholeElement = ({ before, after }: Change): SchemeElement | null =>
  before === null ? after : after === null ? before : null;

const wayOf = ({ before, after }: Pick<Change, "before" | "after">): "set" | "taken away" | "changed" =>
  before === null ? "set" : after === null ? "taken away" : "changed";

const pairOf = <T>(before: T, after: T): Pair<T> | null => (same(before, after) ? null : { before, after });

const same = (one: unknown, other: unknown): boolean => canonicalJson(one) === canonicalJson(other);
