import { storeysOf } from "@cornerway/engine";
import type { Container, Opening, Scheme } from "@cornerway/schema";

/** The next free labels with these capitals: D4, D5 … */
export function nextTags(scheme: Scheme, capitals: string, count: number): string[] {
  const taken = new Set(tagsOf(scheme));
  const tags: string[] = [];
  for (let number = 1; tags.length < count; number += 1) {
    const tag = `${capitals}${number}`;
    if (!taken.has(tag)) tags.push(tag);
  }
  return tags;
}

export const nextTag = (scheme: Scheme, capitals: string): string => nextTags(scheme, capitals, 1)[0] ?? `${capitals}1`;

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

const tagsOf = (scheme: Scheme): string[] =>
  [scheme.containers, scheme.openings, scheme.posts, scheme.pads].flatMap((elements) => elements.map(({ tag }) => tag));
