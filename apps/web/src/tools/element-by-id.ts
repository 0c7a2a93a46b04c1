import type { Container, FloorLoad, Opening, Pad, Post, Scheme } from "@cornerway/schema";

export type Element = Container | Opening | Post | Pad | FloorLoad;

/** The element of a scheme with this id, of whatever kind. */
export const elementById = (scheme: Scheme, id: string): Element | undefined =>
  [scheme.containers, scheme.openings, scheme.posts, scheme.pads, scheme.loads]
    .flatMap((elements): readonly Element[] => elements)
    .find((element) => element.id === id);
