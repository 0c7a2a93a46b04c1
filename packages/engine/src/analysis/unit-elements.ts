import type { AlikeElements } from "../elements/alike.ts";
import { bearingsThatKeepHold } from "./bearings.ts";
import { frameSystem, withPanels, type FrameSystem } from "./frame-system.ts";
import type { ModelPanel } from "../model/analytical-model.ts";
import type { UnitFragment } from "../model/building-model.ts";
import type { Substructure } from "./substructure.ts";

/** A container's lines as elements, and as a part that can be condensed. */
export interface UnitElements extends Substructure {
  readonly frame: FrameSystem;
}

/**
 * `alike`: kinds of elements met in other containers. `before`: a container made before; where its lines are the very same
 * they are taken from it.
 */
export function unitElements(fragment: UnitFragment, alike?: AlikeElements, before?: MadeUnit): UnitElements {
  const { nodes, sections, beams, panels } = fragment;
  const frame =
    before !== undefined && differInSheetsAlone(fragment, before.fragment)
      ? withPanels(before.made.frame, panels, alike)
      : frameSystem({ nodes, sections, beams, panels, ...ALONE }, bearingsThatKeepHold, alike);
  const numbered = (ids: readonly string[]): number[] =>
    ids.map((id) => nodeNumber(frame, id)).toSorted((a, b) => a - b);
  const [retained, momentNodes] = [numbered(fragment.retained), numbered(fragment.momentNodes ?? [])];
  const { elements, sheetOnly } = frame.system;
  return { key: fragment.key, places: frame.places, elements, sheetOnly, retained, momentNodes, frame };
}

export interface MadeUnit {
  readonly fragment: UnitFragment;
  readonly made: UnitElements;
}

const ALONE = { springs: [], links: [], supports: [], cases: {}, combos: {} };

/** Whether they are drawn as one, but for how stiff their sheets are. */
const differInSheetsAlone = (one: UnitFragment, other: UnitFragment): boolean =>
  one.beams === other.beams &&
  one.nodes === other.nodes &&
  one.sections === other.sections &&
  one.panels.length === other.panels.length &&
  one.panels.every((panel, n) => isInPlaceOf(panel, other.panels[n]));

const isInPlaceOf = (panel: ModelPanel, other: ModelPanel | undefined): boolean =>
  panel.id === other?.id && panel.nodes === other.nodes && panel.off === other.off;

function nodeNumber({ nodeOf }: FrameSystem, id: string): number {
  const node = nodeOf.get(id);
  if (node === undefined) throw new Error(`the container has no node "${id}" to retain`);
  return node;
}
