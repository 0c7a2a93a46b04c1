import type { Operation } from "./operation.ts";
import { type Scheme, mostContainers, mostLoads, mostOpenings, mostPads, mostPosts } from "./scheme.ts";

/** Why an operation cannot be applied: a fact about the scheme, not a fault of the program. */
export type Refusal = {
  reason: "id-taken" | "tag-taken" | "not-found" | "still-holds" | "full" | "not-valid";
  elementId: string;
  /** The elements in the way, by id. */
  by: string[];
};

export type Applied = { ok: true; scheme: Scheme; inverse: Operation[] } | { ok: false; refusal: Refusal };

type Collections = Pick<Scheme, "containers" | "openings" | "posts" | "pads" | "loads">;
type CollectionName = keyof Collections;
type ElementOf<N extends CollectionName> = Collections[N][number];

const most: Record<CollectionName, number> = {
  containers: mostContainers,
  openings: mostOpenings,
  posts: mostPosts,
  pads: mostPads,
  loads: mostLoads,
};

/**
 * The scheme after one operation and the operations that take it back. The given scheme is not changed.
 * Collections stay sorted by id, so that independent operations give one digest in any order.
 */
export function applyOperation(scheme: Scheme, operation: Operation): Applied {
  switch (operation.kind) {
    case "container.place":
      return add(scheme, "containers", operation.container, [], {
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
      return remove(scheme, "containers", operation.id, heldBy(scheme, operation.id), (container) => ({
        kind: "container.place",
        container,
      }));
    case "opening.cut":
      return add(scheme, "openings", operation.opening, [operation.opening.containerId], {
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
      return remove(scheme, "openings", operation.id, [], (opening) => ({ kind: "opening.cut", opening }));
    case "post.set":
      return add(scheme, "posts", operation.post, [], { kind: "post.remove", id: operation.post.id });
    case "post.move": {
      const { kind, id, ...place } = operation;
      return change(scheme, "posts", id, place, ({ xUm, yUm }) => ({ kind, id, xUm, yUm }));
    }
    case "post.length": {
      const { kind, id, ...ends } = operation;
      return change(scheme, "posts", id, ends, ({ baseZUm, topZUm }) => ({ kind, id, baseZUm, topZUm }));
    }
    case "post.remove":
      return remove(scheme, "posts", operation.id, [], (post) => ({ kind: "post.set", post }));
    case "pad.set":
      return add(scheme, "pads", operation.pad, [], { kind: "pad.remove", id: operation.pad.id });
    case "pad.move": {
      const { kind, id, ...place } = operation;
      return change(scheme, "pads", id, place, ({ xUm, yUm, topZUm }) => ({ kind, id, xUm, yUm, topZUm }));
    }
    case "pad.remove":
      return remove(scheme, "pads", operation.id, [], (pad) => ({ kind: "pad.set", pad }));
    case "load.put":
      return add(scheme, "loads", operation.load, [operation.load.containerId], {
        kind: "load.remove",
        id: operation.load.id,
      });
    case "load.change": {
      const { kind, id, pressurePa } = operation;
      return change(scheme, "loads", id, { pressurePa }, (was) => ({ kind, id, pressurePa: was.pressurePa }));
    }
    case "load.remove":
      return remove(scheme, "loads", operation.id, [], (load) => ({ kind: "load.put", load }));
    case "site.change":
      return {
        ok: true,
        scheme: { ...scheme, site: operation.site },
        inverse: [{ kind: "site.change", site: scheme.site }],
      };
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

function add<N extends CollectionName>(
  scheme: Scheme,
  name: N,
  element: ElementOf<N>,
  needs: string[],
  inverse: Operation,
): Applied {
  const missing = needs.filter((id) => !scheme.containers.some((container) => container.id === id));
  if (missing.length > 0) return refuse("not-found", element.id, missing);
  if (idTaken(scheme, element.id)) return refuse("id-taken", element.id, [element.id]);
  const twin = tagHolder(scheme, element);
  if (twin !== undefined) return refuse("tag-taken", element.id, [twin]);
  const elements: readonly ElementOf<N>[] = scheme[name];
  if (elements.length >= most[name]) return refuse("full", element.id, []);
  const at = elements.findIndex((other) => other.id > element.id);
  const place = at === -1 ? elements.length : at;
  return { ok: true, scheme: { ...scheme, [name]: elements.toSpliced(place, 0, element) }, inverse: [inverse] };
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
  holds: string[],
  inverse: (was: ElementOf<N>) => Operation,
): Applied {
  const elements: readonly ElementOf<N>[] = scheme[name];
  const was = elements.find((element) => element.id === id);
  if (was === undefined) return refuse("not-found", id, [id]);
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

const collectionsOf = (scheme: Scheme) => [scheme.containers, scheme.openings, scheme.posts, scheme.pads, scheme.loads];

const idTaken = (scheme: Scheme, id: string) =>
  collectionsOf(scheme).some((elements) => elements.some((element) => element.id === id));

function tagHolder(scheme: Scheme, element: { id: string; tag?: string }): string | undefined {
  if (element.tag === undefined) return undefined;
  for (const elements of [scheme.containers, scheme.openings, scheme.posts, scheme.pads]) {
    const twin = elements.find((other) => other.tag === element.tag);
    if (twin !== undefined) return twin.id;
  }
  return undefined;
}

const heldBy = (scheme: Scheme, containerId: string) =>
  [...scheme.openings, ...scheme.loads].filter((part) => part.containerId === containerId).map((part) => part.id);
