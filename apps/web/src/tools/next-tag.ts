import { storeysOf } from "@cornerway/engine";
import { elementsOf, tagOf, type Container, type Opening, type Scheme } from "@cornerway/schema";

/** Hands out free labels one after the other, each once: D4, D5 … */
export function tagMaker(scheme: Scheme): (capitals: string) => string {
  const taken = new Set(elementsOf(scheme).map(tagOf));
  return (capitals) => {
    for (let number = 1; ; number += 1) {
      const tag = `${capitals}${number}`;
      if (taken.has(tag)) continue;
      taken.add(tag);
      return tag;
    }
  };
}

/** The next free labels with these capitals. */
export function nextTags(scheme: Scheme, capitals: string, count: number): string[] {
  const next = tagMaker(scheme);
  return Array.from({ length: count }, () => next(capitals));
}

export const nextTag = (scheme: Scheme, capitals: string): string => tagMaker(scheme)(capitals);

/** G on the ground, F first, T second; then U, V … */
export function unitCapital(scheme: Scheme, unit: Container): string {
  const storeys = storeysOf({ ...scheme, containers: [...scheme.containers.filter(({ id }) => id !== unit.id), unit] });
  const storey = storeys.find(({ containerIds }) => containerIds.includes(unit.id))?.index ?? 0;
  return storeyCapitals[storey] ?? "Z";
}

export const openingCapital: Record<Opening["use"], string> = {
  door: "D",
  passage: "D",
  window: "W",
  "open-wall": "O",
  hatch: "H",
};

const storeyCapitals = ["G", "F", "T", "U", "V", "X", "Y"];
