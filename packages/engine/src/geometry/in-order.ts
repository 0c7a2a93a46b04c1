import type { Scheme } from "@cornerway/schema";

/** The scheme with every collection sorted by id, as the schema stores it, so that no answer hangs on their order. */
export const inOrder = (scheme: Scheme): Scheme => ({
  ...scheme,
  containers: scheme.containers.toSorted(byId),
  openings: scheme.openings.toSorted(byId),
  posts: scheme.posts.toSorted(byId),
  pads: scheme.pads.toSorted(byId),
  loads: scheme.loads.toSorted(byId),
  freeLoads: scheme.freeLoads.toSorted(byId),
  uses: scheme.uses.toSorted(byId),
  beams: scheme.beams.toSorted(byId),
  seats: scheme.seats.toSorted(byId),
  ties: scheme.ties.toSorted(byId),
  locks: scheme.locks.toSorted(byId),
  overrides: scheme.overrides.toSorted(byId),
});

const byId = (a: { readonly id: string }, b: { readonly id: string }): number =>
  a.id < b.id ? -1 : a.id > b.id ? 1 : 0;
