import type { Operation } from "./operation.ts";
import type { Scheme } from "./scheme.ts";
import {
  elementById,
  findElement,
  hangsOn,
  mostOf,
  referencesOf,
  tagOf,
  type CollectionName,
  type ElementOf,
  type SchemeElement,
} from "./scheme-collections.ts";

/** Why an operation cannot be applied: a fact about the scheme, not a fault of the program. */
export type Refusal = {
  reason: "id-taken" | "tag-taken" | "not-found" | "still-holds" | "full" | "not-valid";
  elementId: string;
  /** The elements in the way, by id. */
  by: string[];
};

export type Applied = { ok: true; scheme: Scheme; inverse: Operation[] } | { ok: false; refusal: Refusal };

/**
 * The scheme after one operation and the operations that take it back. The given scheme is not changed.
 * Collections stay sorted by id, so that independent operations give one digest in any order.
 */
export function applyOperation(scheme: Scheme, operation: Operation): Applied {
  switch (operation.kind) {
    case "container.place":
      return add(scheme, "containers", operation.container, {
        kind: "container.remove",
        id: operation.container.id,
      });
    case "container.move": {
      const { kind, id, ...place } = operation;
      return change(scheme, "containers", id, place, (was) => ({ kind, id, xUm: was.xUm, yUm: was.yUm, zUm: was.zUm }));
    }
    case "container.turn": {
      const { kind, id, turnMdeg } = operation;
      return change(scheme, "containers", id, { turnMdeg }, (was) => ({ kind, id, turnMdeg: was.turnMdeg }));
    }
    case "container.retype": {
      const { kind, id, type } = operation;
      return change(scheme, "containers", id, { type }, (was) => ({ kind, id, type: was.type }));
    }
    case "container.remove":
      return remove(scheme, "containers", operation.id, (container) => ({
        kind: "container.place",
        container,
      }));
    case "opening.cut":
      return add(scheme, "openings", operation.opening, {
        kind: "opening.close",
        id: operation.opening.id,
      });
    case "opening.shape": {
      const { kind, id, ...shape } = operation;
      return change(scheme, "openings", id, shape, ({ offsetUm, sillUm, widthUm, heightUm }) => ({
        kind,
        id,
        offsetUm,
        sillUm,
        widthUm,
        heightUm,
      }));
    }
    case "opening.dress": {
      const { kind, id, ...dress } = operation;
      return change(scheme, "openings", id, dress, ({ use, framed }) => ({ kind, id, use, framed }));
    }
    case "opening.close":
      return remove(scheme, "openings", operation.id, (opening) => ({ kind: "opening.cut", opening }));
    case "post.set":
      return add(scheme, "posts", operation.post, { kind: "post.remove", id: operation.post.id });
    case "post.move": {
      const { kind, id, ...place } = operation;
      return change(scheme, "posts", id, place, ({ xUm, yUm }) => ({ kind, id, xUm, yUm }));
    }
    case "post.length": {
      const { kind, id, ...ends } = operation;
      return change(scheme, "posts", id, ends, ({ baseZUm, topZUm }) => ({ kind, id, baseZUm, topZUm }));
    }
    case "post.remove":
      return remove(scheme, "posts", operation.id, (post) => ({ kind: "post.set", post }));
    case "pad.set":
      return add(scheme, "pads", operation.pad, { kind: "pad.remove", id: operation.pad.id });
    case "pad.move": {
      const { kind, id, ...place } = operation;
      return change(scheme, "pads", id, place, ({ xUm, yUm, topZUm }) => ({ kind, id, xUm, yUm, topZUm }));
    }
    case "pad.remove":
      return remove(scheme, "pads", operation.id, (pad) => ({ kind: "pad.set", pad }));
    case "load.put":
      return add(scheme, "loads", operation.load, {
        kind: "load.remove",
        id: operation.load.id,
      });
    case "load.change": {
      const { kind, id, pressurePa } = operation;
      return change(scheme, "loads", id, { pressurePa }, (was) => ({ kind, id, pressurePa: was.pressurePa }));
    }
    case "load.remove":
      return remove(scheme, "loads", operation.id, (load) => ({ kind: "load.put", load }));
    case "site.change":
      return {
        ok: true,
        scheme: { ...scheme, site: operation.site },
        inverse: [{ kind: "site.change", site: scheme.site }],
      };
    case "basis.change":
      return {
        ok: true,
        scheme: { ...scheme, basis: operation.basis },
        inverse: [{ kind: "basis.change", basis: scheme.basis }],
      };
    case "container.change":
      return replace(scheme, "containers", operation.container, (container) => ({ kind: operation.kind, container }));
    case "opening.change":
      return replace(scheme, "openings", operation.opening, (opening) => ({ kind: operation.kind, opening }));
    case "post.change":
      return replace(scheme, "posts", operation.post, (post) => ({ kind: operation.kind, post }));
    case "pad.change":
      return replace(scheme, "pads", operation.pad, (pad) => ({ kind: operation.kind, pad }));
    case "beam.set":
      return add(scheme, "beams", operation.beam, { kind: "beam.remove", id: operation.beam.id });
    case "beam.change":
      return replace(scheme, "beams", operation.beam, (beam) => ({ kind: operation.kind, beam }));
    case "beam.remove":
      return remove(scheme, "beams", operation.id, (beam) => ({ kind: "beam.set", beam }));
    case "seat.set":
      return add(scheme, "seats", operation.seat, { kind: "seat.remove", id: operation.seat.id });
    case "seat.change":
      return replace(scheme, "seats", operation.seat, (seat) => ({ kind: operation.kind, seat }));
    case "seat.remove":
      return remove(scheme, "seats", operation.id, (seat) => ({ kind: "seat.set", seat }));
    case "tie.set":
      return add(scheme, "ties", operation.tie, { kind: "tie.remove", id: operation.tie.id });
    case "tie.change":
      return replace(scheme, "ties", operation.tie, (tie) => ({ kind: operation.kind, tie }));
    case "tie.remove":
      return remove(scheme, "ties", operation.id, (tie) => ({ kind: "tie.set", tie }));
    case "lock.set":
      return add(scheme, "locks", operation.lock, { kind: "lock.remove", id: operation.lock.id });
    case "lock.change":
      return replace(scheme, "locks", operation.lock, (lock) => ({ kind: operation.kind, lock }));
    case "lock.remove":
      return remove(scheme, "locks", operation.id, (lock) => ({ kind: "lock.set", lock }));
    case "free-load.put":
      return add(scheme, "freeLoads", operation.load, { kind: "free-load.remove", id: operation.load.id });
    case "free-load.change":
      return replace(scheme, "freeLoads", operation.load, (load) => ({ kind: operation.kind, load }));
    case "free-load.remove":
      return remove(scheme, "freeLoads", operation.id, (load) => ({ kind: "free-load.put", load }));
    case "use.set":
      return add(scheme, "uses", operation.use, { kind: "use.remove", id: operation.use.id });
    case "use.change":
      return replace(scheme, "uses", operation.use, (use) => ({ kind: operation.kind, use }));
    case "use.remove":
      return remove(scheme, "uses", operation.id, (use) => ({ kind: "use.set", use }));
    case "override.set":
      return add(scheme, "overrides", operation.override, { kind: "override.remove", id: operation.override.id });
    case "override.change":
      return replace(scheme, "overrides", operation.override, (override) => ({ kind: operation.kind, override }));
    case "override.remove":
      return remove(scheme, "overrides", operation.id, (override) => ({ kind: "override.set", override }));
  }
}

/** The scheme after all operations, or the first refusal and none of them; `inverse` takes all of them back. */
export function applyOperations(scheme: Scheme, operations: readonly Operation[]): Applied {
  let after = scheme;
  const inverse: Operation[] = [];
  for (const operation of operations) {
    const applied = applyOperation(after, operation);
    if (!applied.ok) return applied;
    after = applied.scheme;
    inverse.unshift(...applied.inverse);
  }
  return { ok: true, scheme: after, inverse };
}

function add<N extends CollectionName>(scheme: Scheme, name: N, element: ElementOf<N>, inverse: Operation): Applied {
  const missing = missingFor(scheme, element);
  if (missing.length > 0) return refuse("not-found", element.id, missing);
  if (elementById(scheme, element.id) !== undefined) return refuse("id-taken", element.id, [element.id]);
  const twin = tagHolder(scheme, element);
  if (twin !== undefined) return refuse("tag-taken", element.id, [twin]);
  const elements: readonly ElementOf<N>[] = scheme[name];
  if (elements.length >= mostOf[name]) return refuse("full", element.id, []);
  const at = elements.findIndex((other) => other.id > element.id);
  const place = at === -1 ? elements.length : at;
  return { ok: true, scheme: { ...scheme, [name]: elements.toSpliced(place, 0, element) }, inverse: [inverse] };
}

/** Puts an element in the place of the one with its id. */
function replace<N extends CollectionName>(
  scheme: Scheme,
  name: N,
  element: ElementOf<N>,
  inverse: (was: ElementOf<N>) => Operation,
): Applied {
  const elements: readonly ElementOf<N>[] = scheme[name];
  const at = elements.findIndex(({ id }) => id === element.id);
  const was = elements[at];
  if (was === undefined) return refuse("not-found", element.id, [element.id]);
  const missing = missingFor(scheme, element);
  if (missing.length > 0) return refuse("not-found", element.id, missing);
  const twin = tagHolder(scheme, element);
  if (twin !== undefined) return refuse("tag-taken", element.id, [twin]);
  return { ok: true, scheme: { ...scheme, [name]: elements.with(at, element) }, inverse: [inverse(was)] };
}

function change<N extends CollectionName>(
  scheme: Scheme,
  name: N,
  id: string,
  to: Partial<ElementOf<N>>,
  inverse: (was: ElementOf<N>) => Operation,
): Applied {
  const elements: readonly ElementOf<N>[] = scheme[name];
  const at = elements.findIndex((element) => element.id === id);
  const was = elements[at];
  if (was === undefined) return refuse("not-found", id, [id]);
  const after: Scheme = { ...scheme, [name]: elements.with(at, { ...was, ...to }) };
  if ("topZUm" in to && "baseZUm" in to && Number(to.topZUm) <= Number(to.baseZUm))
    return refuse("not-valid", id, [id]);
  return { ok: true, scheme: after, inverse: [inverse(was)] };
}

function remove<N extends CollectionName>(
  scheme: Scheme,
  name: N,
  id: string,
  inverse: (was: ElementOf<N>) => Operation,
): Applied {
  const elements: readonly ElementOf<N>[] = scheme[name];
  const was = elements.find((element) => element.id === id);
  if (was === undefined) return refuse("not-found", id, [id]);
  const holds = hangsOn(scheme, id);
  if (holds.length > 0) return refuse("still-holds", id, holds);
  return {
    ok: true,
    scheme: { ...scheme, [name]: elements.filter((element) => element.id !== id) },
    inverse: [inverse(was)],
  };
}

const refuse = (reason: Refusal["reason"], elementId: string, by: string[]): Applied => ({
  ok: false,
  refusal: { reason, elementId, by },
});

/** What an element hangs on and the scheme does not hold, or not as the right thing. */
const missingFor = (scheme: Scheme, element: SchemeElement): string[] =>
  referencesOf(element)
    .filter(({ id, among }) => !among.some((name) => scheme[name].some((other) => other.id === id)))
    .map(({ id }) => id);

/** The other element that has this one's label already. */
function tagHolder(scheme: Scheme, element: SchemeElement): string | undefined {
  const tag = tagOf(element);
  if (tag === undefined) return undefined;
  return findElement(scheme, (other) => other.id !== element.id && tagOf(other) === tag)?.id;
}
