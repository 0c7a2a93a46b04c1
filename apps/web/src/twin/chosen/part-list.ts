import type { CollectionName } from "@cornerway/schema";

const partLists = [
  "containers",
  "openings",
  "posts",
  "pads",
  "beams",
  "seats",
  "ties",
  "locks",
  "freeLoads",
] as const satisfies readonly CollectionName[];

/** The lists whose elements are stated by their properties. */
export type PartList = (typeof partLists)[number];

export const isPartList = (name: CollectionName | undefined): name is PartList =>
  partLists.some((list) => list === name);
