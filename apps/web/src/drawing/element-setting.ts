import type { ElementKind } from "./contract.ts";
import type { ElementNamer } from "./element-namer.ts";
import type { ElementVerdict } from "./marks/element-verdicts.ts";
import type { ViewTransform } from "./view-transform.ts";

/** What every element of a view is drawn with. */
export type ElementSetting = {
  view: ViewTransform;
  verdicts: ReadonlyMap<string, ElementVerdict>;
  nameOf: ElementNamer;
  /** The item Tab enters the tree at. */
  entryId: string | null;
  selectedId: string | null;
  /** True in a drawing that is only looked at. */
  still: boolean;
};

/** What makes an element an item of its view's tree: its name, its place in the tree, whether it is chosen. */
export const itemOf = (
  { nameOf, entryId, selectedId, still }: Pick<ElementSetting, "nameOf" | "entryId" | "selectedId" | "still">,
  id: string,
  kind: ElementKind,
  level: 1 | 2 = 1,
) => ({ id, kind, ...nameOf(id), level, selected: selectedId === id, entry: entryId === id, still });
