import type { AlikeElements } from "../elements/alike.ts";
import { bearingsThatKeepHold } from "./bearings.ts";
import { frameSystem, type FrameSystem } from "./frame-system.ts";
import type { UnitFragment } from "../model/building-model.ts";
import type { Substructure } from "./substructure.ts";

/** A container's lines as elements, and as a part that can be condensed. */
export interface UnitElements extends Substructure {
  readonly frame: FrameSystem;
}

/** `alike`: kinds of elements met in other containers. */
export function unitElements(fragment: UnitFragment, alike?: AlikeElements): UnitElements {
  const { nodes, sections, beams, panels } = fragment;
  const alone = { springs: [], links: [], supports: [], cases: {}, combos: {} };
  const frame = frameSystem({ nodes, sections, beams, panels, ...alone }, bearingsThatKeepHold, alike);
  const retained = fragment.retained.map((id) => nodeNumber(frame, id)).sort((a, b) => a - b);
  const { elements, sheetOnly } = frame.system;
  return { key: fragment.key, places: frame.places, elements, sheetOnly, retained, frame };
}

function nodeNumber({ nodeOf }: FrameSystem, id: string): number {
  const node = nodeOf.get(id);
  if (node === undefined) throw new Error(`the container has no node "${id}" to retain`);
  return node;
}
