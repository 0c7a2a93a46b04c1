import { collectionNames, type CollectionName, type ElementOf, type Operation, type Scheme } from "@cornerway/schema";

interface Writes<E> {
  add: (element: E) => Operation;
  change: (element: E) => Operation;
  remove: (id: string) => Operation;
  /** First letter of a new id. */
  letter: string;
}

/** The operations that write each kind of element whole. */
export const writes: { readonly [N in CollectionName]: Writes<ElementOf<N>> } = {
  containers: {
    add: (container) => ({ kind: "container.place", container }),
    change: (container) => ({ kind: "container.change", container }),
    remove: (id) => ({ kind: "container.remove", id }),
    letter: "u",
  },
  posts: {
    add: (post) => ({ kind: "post.set", post }),
    change: (post) => ({ kind: "post.change", post }),
    remove: (id) => ({ kind: "post.remove", id }),
    letter: "p",
  },
  pads: {
    add: (pad) => ({ kind: "pad.set", pad }),
    change: (pad) => ({ kind: "pad.change", pad }),
    remove: (id) => ({ kind: "pad.remove", id }),
    letter: "b",
  },
  beams: {
    add: (beam) => ({ kind: "beam.set", beam }),
    change: (beam) => ({ kind: "beam.change", beam }),
    remove: (id) => ({ kind: "beam.remove", id }),
    letter: "m",
  },
  openings: {
    add: (opening) => ({ kind: "opening.cut", opening }),
    change: (opening) => ({ kind: "opening.change", opening }),
    remove: (id) => ({ kind: "opening.close", id }),
    letter: "o",
  },
  loads: {
    add: (load) => ({ kind: "load.put", load }),
    change: ({ id, pressurePa }) => ({ kind: "load.change", id, pressurePa }),
    remove: (id) => ({ kind: "load.remove", id }),
    letter: "l",
  },
  freeLoads: {
    add: (load) => ({ kind: "free-load.put", load }),
    change: (load) => ({ kind: "free-load.change", load }),
    remove: (id) => ({ kind: "free-load.remove", id }),
    letter: "q",
  },
  uses: {
    add: (use) => ({ kind: "use.set", use }),
    change: (use) => ({ kind: "use.change", use }),
    remove: (id) => ({ kind: "use.remove", id }),
    letter: "y",
  },
  seats: {
    add: (seat) => ({ kind: "seat.set", seat }),
    change: (seat) => ({ kind: "seat.change", seat }),
    remove: (id) => ({ kind: "seat.remove", id }),
    letter: "s",
  },
  ties: {
    add: (tie) => ({ kind: "tie.set", tie }),
    change: (tie) => ({ kind: "tie.change", tie }),
    remove: (id) => ({ kind: "tie.remove", id }),
    letter: "t",
  },
  locks: {
    add: (lock) => ({ kind: "lock.set", lock }),
    change: (lock) => ({ kind: "lock.change", lock }),
    remove: (id) => ({ kind: "lock.remove", id }),
    letter: "k",
  },
  overrides: {
    add: (override) => ({ kind: "override.set", override }),
    change: (override) => ({ kind: "override.change", override }),
    remove: (id) => ({ kind: "override.remove", id }),
    letter: "v",
  },
};

/** The list an element is in, by its id. */
export const listOfElement = (scheme: Scheme, id: string): CollectionName | undefined =>
  collectionNames.find((name) => scheme[name].some((element) => element.id === id));

/** An operation that takes one element off, when it is there. */
export function removal(scheme: Scheme, id: string): Operation[] {
  const name = listOfElement(scheme, id);
  return name === undefined ? [] : [writes[name].remove(id)];
}
