import type { Operation, Scheme } from "@cornerway/schema";
import { padsOfAlone } from "./pads-follow.ts";

/**
 * Takes an element off the drawing. With a unit go its openings, its loads and the pads that held it alone, as one act
 * that one undo brings back whole.
 */
export function removeElement(scheme: Scheme, id: string): Operation[] {
  const unit = scheme.containers.find((container) => container.id === id);
  if (unit !== undefined)
    return [
      ...scheme.openings
        .filter((opening) => opening.containerId === id)
        .map(({ id }): Operation => ({ kind: "opening.close", id })),
      ...scheme.loads
        .filter((load) => load.containerId === id)
        .map(({ id }): Operation => ({ kind: "load.remove", id })),
      { kind: "container.remove", id },
      ...padsOfAlone(scheme, unit).map(({ pad }): Operation => ({ kind: "pad.remove", id: pad.id })),
    ];
  if (scheme.openings.some((opening) => opening.id === id)) return [{ kind: "opening.close", id }];
  if (scheme.posts.some((post) => post.id === id)) return [{ kind: "post.remove", id }];
  if (scheme.pads.some((pad) => pad.id === id)) return [{ kind: "pad.remove", id }];
  return [];
}
