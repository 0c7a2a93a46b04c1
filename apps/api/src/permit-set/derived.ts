import {
  elevationModel,
  gridOf,
  isometricModel,
  placeContainer,
  planModel,
  storeysOf,
  type ElevationModel,
  type Grid,
  type IsometricModel,
  type PlacedContainer,
  type PlanModel,
  type Side,
  type Storey,
} from "@cornerway/engine";
import { elementNames, inTags } from "@cornerway/schema";
import type { SetSource } from "./set-source.ts";

export const sides = ["south", "east", "north", "west"] as const satisfies readonly Side[];

/** What the engine works out once from the scheme of the revision, for every page alike. */
export type Derived = {
  storeys: readonly Storey[];
  grid: Grid;
  placed: ReadonlyMap<string, PlacedContainer>;
  elevations: Readonly<Record<Side, ElevationModel>>;
  plans: readonly PlanModel[];
  isometric: IsometricModel;
  /** The tag of an element by its id. */
  tag: (id: string) => string;
  /** Words of the engine with tags in place of ids. */
  tagged: (words: string) => string;
};

export function derive({ scheme, revisions }: SetSource): Derived {
  const letters = revisions.map(({ letter }) => letter);
  const tags = elementNames(scheme);
  const storeys = storeysOf(scheme);
  const of = (side: Side) => elevationModel(scheme, side, letters);
  return {
    storeys,
    grid: gridOf(scheme, letters),
    placed: new Map(scheme.containers.map((container) => [container.id, placeContainer(container)])),
    elevations: { south: of("south"), east: of("east"), north: of("north"), west: of("west") },
    plans: storeys.map(({ index }) => planModel(scheme, index)),
    isometric: isometricModel(scheme),
    tag: (id) => tags.get(id) ?? id,
    tagged: (words) => inTags(words, tags),
  };
}
