import type { CollectionName, ElementOf } from "@cornerway/schema";

/** What a copy is given anew: its own id, a fresh label, and the copies of what it hangs on. */
export interface Anew {
  id: string;
  label: (capitals: string) => string;
  rename: (id: string) => string;
}

type Copy<E> = (element: E, anew: Anew) => E;

/** Each kind of element as a copy of itself. */
const copies: { readonly [N in CollectionName]: Copy<ElementOf<N>> } = {
  containers: (unit, anew) => labelled(unit, anew),
  posts: (post, anew) => labelled(post, anew),
  pads: (pad, anew) => labelled(pad, anew),
  beams: (beam, anew) => labelled(beam, anew),
  openings: (opening, anew) => onUnit(labelled(opening, anew), anew),
  loads: (load, anew) => onUnit({ ...load, id: anew.id }, anew),
  freeLoads: (load, anew) => onUnit(labelled(load, anew), anew),
  uses: (use, anew) => onUnit({ ...use, id: anew.id }, anew),
  seats: (seat, anew) => ({
    ...labelled(seat, anew),
    upperId: anew.rename(seat.upperId),
    lowerId: anew.rename(seat.lowerId),
  }),
  ties: (tie, anew) => ({ ...labelled(tie, anew), aId: anew.rename(tie.aId), bId: anew.rename(tie.bId) }),
  locks: (lock, anew) => onUnit(labelled(lock, anew), anew),
  overrides: (override, anew) => ({ ...override, id: anew.id, elementId: anew.rename(override.elementId) }),
};

export function copyElement<N extends CollectionName>(name: N, element: ElementOf<N>, anew: Anew): ElementOf<N> {
  const copy: Copy<ElementOf<N>> = copies[name];
  return copy(element, anew);
}

const labelled = <E extends { tag: string }>(element: E, { id, label }: Anew): E => ({
  ...element,
  id,
  tag: label(element.tag.replace(/\d+$/, "")),
});

const onUnit = <E extends { containerId: string }>(element: E, { rename }: Anew): E => ({
  ...element,
  containerId: rename(element.containerId),
});
