import type { HoldPoint, Scheme, SiteItem, SiteItemKind } from "@cornerway/schema";
import { takeOff } from "../cost/take-off.ts";

/**
 * What is built or looked at on site, one by one: added steel and connections, pads, the framing of openings, all weld of each
 * element as the quantities have it, and what is looked at before the next step.
 */
export function siteItems(scheme: Scheme): SiteItem[] {
  const framed = scheme.openings.filter((opening) => opening.framed);
  return [
    ...itemsOf("post", scheme.posts),
    ...itemsOf("beam", scheme.beams),
    ...itemsOf("seat", scheme.seats),
    ...itemsOf("framing", framed),
    ...itemsOf("tie", scheme.ties),
    ...itemsOf("lock", scheme.locks),
    ...itemsOf("pad", scheme.pads),
    ...welds(scheme),
    ...holds(scheme),
  ];
}

const itemsOf = (kind: SiteItemKind, elements: readonly { id: string }[]): SiteItem[] =>
  elements.map(({ id }) => ({ key: `${kind}:${id}`, kind, point: null, elementId: id, weldM: null }));

function welds(scheme: Scheme): SiteItem[] {
  const lengthM = new Map<string, number>();
  for (const { item, elementId, quantity } of takeOff(scheme, new Set()).lines)
    if (item === "weld of 5 mm") lengthM.set(elementId, (lengthM.get(elementId) ?? 0) + quantity);
  return [...lengthM]
    .toSorted(([one], [other]) => (one < other ? -1 : 1))
    .map(([elementId, weldM]) => ({ key: `weld:${elementId}`, kind: "weld", point: null, elementId, weldM }));
}

function holds({ containers, pads, openings }: Scheme): SiteItem[] {
  const cutIn = new Set(openings.map(({ containerId }) => containerId));
  const staged = (stage: string) => openings.filter(({ cut }) => cut === stage);
  return [
    ...holdsOf("container surveyed", containers),
    ...holdsOf(
      "steel as assumed before cutting",
      containers.filter(({ id }) => cutIn.has(id)),
    ),
    ...holdsOf("ground and level of the pad", pads),
    ...holdsOf("in its place before cutting", staged("after placing")),
    ...holdsOf("shored before cutting", staged("after shoring")),
  ];
}

const holdsOf = (point: HoldPoint, elements: readonly { id: string }[]): SiteItem[] =>
  elements.map(({ id }) => ({ key: `${point}:${id}`, kind: "hold point", point, elementId: id, weldM: null }));
