import { placeContainer, solidCorners } from "@cornerway/engine";
import { elementById, elementsOf, referencesOf, type Scheme } from "@cornerway/schema";
import { hanging } from "./remove-elements.ts";

/** The chosen things, and what goes with them because all it hangs on is among them: cuts, loads, locks, joints. */
export function wholeGroup(scheme: Scheme, ids: readonly string[]): ReadonlySet<string> {
  const chosen = new Set(ids);
  const held = hanging(scheme, ids).filter((id) => {
    const element = elementById(scheme, id);
    return element !== undefined && referencesOf(element).every((reference) => chosen.has(reference.id));
  });
  return new Set([...ids, ...held]);
}

export interface GroupBox {
  westUm: number;
  eastUm: number;
  southUm: number;
  northUm: number;
}

/** The upright box round the chosen things in plan, µm; null where none of them has a place of its own. */
export function groupBox(scheme: Scheme, ids: readonly string[]): GroupBox | null {
  const chosen = new Set(ids);
  const corners = scheme.containers
    .filter(({ id }) => chosen.has(id))
    .flatMap((unit) => solidCorners(placeContainer(unit)).map(({ xMm, yMm }) => [xMm * 1000, yMm * 1000] as const));
  const spots = elementsOf(scheme)
    .filter(({ id }) => chosen.has(id))
    .flatMap((element): (readonly [number, number])[] => {
      if ("from" in element) return [element.from, element.to].map(({ xUm, yUm }) => [xUm, yUm] as const);
      const hasPlace = "xUm" in element && !("containerId" in element) && !("type" in element);
      return hasPlace ? [[element.xUm, element.yUm]] : [];
    });
  const all = [...corners, ...spots];
  if (all.length === 0) return null;
  const xs = all.map(([x]) => x);
  const ys = all.map(([, y]) => y);
  return {
    westUm: Math.round(Math.min(...xs)),
    eastUm: Math.round(Math.max(...xs)),
    southUm: Math.round(Math.min(...ys)),
    northUm: Math.round(Math.max(...ys)),
  };
}

export const middleOf = ({ westUm, eastUm, southUm, northUm }: GroupBox) => ({
  xUm: Math.round((westUm + eastUm) / 2),
  yUm: Math.round((southUm + northUm) / 2),
});
