import type { HeldEdges } from "../tools/resize-opening.ts";

/** The eight handles of an opening: corners and middles of its edges, as the elevation shows them. */
export const handles: readonly HeldEdges[] = [
  { along: -1, up: -1 },
  { along: 0, up: -1 },
  { along: 1, up: -1 },
  { along: -1, up: 0 },
  { along: 1, up: 0 },
  { along: -1, up: 1 },
  { along: 0, up: 1 },
  { along: 1, up: 1 },
];

export const handleName = ({ along, up }: HeldEdges): string => `${along},${up}`;

/** The edges of the handle under the pointer; undefined where there is none. */
export function edgesOf(target: EventTarget): HeldEdges | undefined {
  const drawn = target instanceof Element ? target.closest<SVGElement>("[data-handle]") : null;
  return handles.find((handle) => handleName(handle) === drawn?.dataset["handle"]);
}
