import { canonicalJson } from "./canonical-json.ts";
import type { Operation } from "./operation.ts";
import {
  collectionNames,
  elementsOf,
  referencesOf,
  type CollectionName,
  type ElementOf,
} from "./scheme-collections.ts";
import type { Scheme } from "./scheme.ts";

/**
 * The operations that make one scheme into another. What differs is taken away whole and set anew, with all that hangs on
 * it, so that no step meets an id or a label that is still taken; what is the same in both stays.
 */
export function operationsBetween(from: Scheme, to: Scheme): Operation[] {
  const stays = stayingIds(from, to);
  const away = collectionNames
    .toReversed()
    .flatMap((name) => from[name].filter(({ id }) => !stays.has(id)).map(({ id }) => removals[name](id)));
  const anew = collectionNames.flatMap((name) => additionsOf(name, to[name], stays));
  const site: Operation[] = same(from.site, to.site) ? [] : [{ kind: "site.change", site: to.site }];
  const basis: Operation[] = same(from.basis, to.basis) ? [] : [{ kind: "basis.change", basis: to.basis }];
  return [...away, ...site, ...basis, ...anew];
}

/** Ids of the elements that are alike in both, less those that hang on one that is not. */
function stayingIds(from: Scheme, to: Scheme): Set<string> {
  const stays = new Set(collectionNames.flatMap((name) => alikeIds(from[name], to[name])));
  const elements = elementsOf(from);
  for (let before = -1; before !== stays.size;) {
    before = stays.size;
    for (const element of elements)
      if (referencesOf(element).some(({ id }) => !stays.has(id))) stays.delete(element.id);
  }
  return stays;
}

function alikeIds(from: readonly { id: string }[], to: readonly { id: string }[]): string[] {
  const texts = new Map(to.map((element) => [element.id, canonicalJson(element)]));
  return from.filter((element) => texts.get(element.id) === canonicalJson(element)).map(({ id }) => id);
}

const same = (one: unknown, other: unknown): boolean => canonicalJson(one) === canonicalJson(other);

const additionsOf = <N extends CollectionName>(name: N, elements: readonly ElementOf<N>[], stays: Set<string>) =>
  elements.filter(({ id }) => !stays.has(id)).map((element) => additions[name](element));

/** The operation that sets an element as it is. */
export const settingOf = <N extends CollectionName>(name: N, element: ElementOf<N>): Operation =>
  additions[name](element);

/** The operation that takes an element away. */
export const removalOf = (name: CollectionName, id: string): Operation => removals[name](id);

const additions: { [N in CollectionName]: (element: ElementOf<N>) => Operation } = {
  containers: (container) => ({ kind: "container.place", container }),
  posts: (post) => ({ kind: "post.set", post }),
  pads: (pad) => ({ kind: "pad.set", pad }),
  beams: (beam) => ({ kind: "beam.set", beam }),
  openings: (opening) => ({ kind: "opening.cut", opening }),
  loads: (load) => ({ kind: "load.put", load }),
  freeLoads: (load) => ({ kind: "free-load.put", load }),
  uses: (use) => ({ kind: "use.set", use }),
  seats: (seat) => ({ kind: "seat.set", seat }),
  ties: (tie) => ({ kind: "tie.set", tie }),
  locks: (lock) => ({ kind: "lock.set", lock }),
  overrides: (override) => ({ kind: "override.set", override }),
};

const removals: Record<CollectionName, (id: string) => Operation> = {
  containers: (id) => ({ kind: "container.remove", id }),
  posts: (id) => ({ kind: "post.remove", id }),
  pads: (id) => ({ kind: "pad.remove", id }),
  beams: (id) => ({ kind: "beam.remove", id }),
  openings: (id) => ({ kind: "opening.close", id }),
  loads: (id) => ({ kind: "load.remove", id }),
  freeLoads: (id) => ({ kind: "free-load.remove", id }),
  uses: (id) => ({ kind: "use.remove", id }),
  seats: (id) => ({ kind: "seat.remove", id }),
  ties: (id) => ({ kind: "tie.remove", id }),
  locks: (id) => ({ kind: "lock.remove", id }),
  overrides: (id) => ({ kind: "override.remove", id }),
};
