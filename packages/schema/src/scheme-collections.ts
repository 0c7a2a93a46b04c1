import {
  mostBeams,
  mostContainers,
  mostJoints,
  mostLoads,
  mostOpenings,
  mostOverrides,
  mostPads,
  mostPosts,
  type Scheme,
} from "./scheme.ts";

/** The lists of elements a scheme is made of. */
export type Collections = Omit<Scheme, "version" | "site" | "basis">;
export type CollectionName = keyof Collections;
export type ElementOf<N extends CollectionName> = Collections[N][number];
export type SchemeElement = ElementOf<CollectionName>;

/** How many elements each list may hold; in the order in which elements may refer to earlier ones. */
export const mostOf: Readonly<Record<CollectionName, number>> = {
  containers: mostContainers,
  posts: mostPosts,
  pads: mostPads,
  beams: mostBeams,
  openings: mostOpenings,
  loads: mostLoads,
  freeLoads: mostLoads,
  uses: 2 * mostContainers,
  seats: mostJoints,
  ties: mostJoints,
  locks: mostJoints,
  overrides: mostOverrides,
};

/** Their names, in the same order. */
export const collectionNames = [
  "containers",
  "posts",
  "pads",
  "beams",
  "openings",
  "loads",
  "freeLoads",
  "uses",
  "seats",
  "ties",
  "locks",
  "overrides",
] as const satisfies readonly CollectionName[];

/** One field of an element that names another element, and the lists that one may be in. */
export type Reference = { field: string; id: string; among: readonly CollectionName[] };

const unitsOnly = ["containers"] as const;

/** The elements an element hangs on: it cannot be without them, nor they be removed while it is there. */
export function referencesOf(element: SchemeElement): Reference[] {
  if ("upperId" in element)
    return [
      { field: "upperId", id: element.upperId, among: unitsOnly },
      { field: "lowerId", id: element.lowerId, among: ["containers", "beams"] },
    ];
  if ("aId" in element)
    return [
      { field: "aId", id: element.aId, among: unitsOnly },
      { field: "bId", id: element.bId, among: unitsOnly },
    ];
  if ("elementId" in element)
    return [{ field: "elementId", id: element.elementId, among: ["containers", "posts", "beams"] }];
  if ("containerId" in element) return [{ field: "containerId", id: element.containerId, among: unitsOnly }];
  return [];
}

/** The label on the drawing of an element that has one. */
export const tagOf = (element: SchemeElement): string | undefined => ("tag" in element ? element.tag : undefined);

/** Every element of a scheme, list by list. */
export const elementsOf = (scheme: Scheme): SchemeElement[] =>
  collectionNames.flatMap((name): readonly SchemeElement[] => scheme[name]);

/** The first element that is as asked for. Lists are gone through as they are: an act may ask thousands of times. */
export function findElement(scheme: Scheme, is: (element: SchemeElement) => boolean): SchemeElement | undefined {
  for (const name of collectionNames) for (const element of scheme[name]) if (is(element)) return element;
  return undefined;
}

export const elementById = (scheme: Scheme, id: string): SchemeElement | undefined =>
  findElement(scheme, (element) => element.id === id);

/** Ids of everything that hangs on an element. */
export function hangsOn(scheme: Scheme, id: string): string[] {
  const hanging: string[] = [];
  for (const name of collectionNames) {
    if (standsAlone.has(name)) continue;
    for (const element of scheme[name])
      if (referencesOf(element).some((reference) => reference.id === id)) hanging.push(element.id);
  }
  return hanging;
}

/** Lists whose elements refer to no other. */
const standsAlone: ReadonlySet<CollectionName> = new Set(["containers", "posts", "pads"] as const);
