import { frameSystem, type FrameSystem } from "./frame-system.ts";
import type { UnitFragment } from "../model/building-model.ts";
import type { Substructure } from "./substructure.ts";

/** A container's lines as elements, and as a part that can be condensed. */
export interface UnitElements extends Substructure {
  readonly frame: FrameSystem;
}

export function unitElements(fragment: UnitFragment): UnitElements {
  const { nodes, sections, beams, panels } = fragment;
  const frame = frameSystem({
    nodes,
    sections,
    beams,
    panels,
    springs: [],
    links: [],
    supports: [],
    cases: {},
    combos: {},
  });
  const retained = fragment.retained.map((id) => nodeNumber(frame, id)).sort((a, b) => a - b);
  const { elements, sheetOnly } = frame.system;
  return { key: fragment.key, places: frame.places, elements, sheetOnly, retained, frame };
}

function nodeNumber({ nodeOf }: FrameSystem, id: string): number {
  const node = nodeOf.get(id);
  if (node === undefined) throw new Error(`the container has no node "${id}" to retain`);
  return node;
}
