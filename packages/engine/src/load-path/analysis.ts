import type { Scheme } from "@cornerway/schema";
import type { OpenCorner, UnitBearing } from "../bearing/contact.ts";
import { carryingPosts, postFooting, type Footing } from "../bearing/post-footing.ts";
import { structureOf, type Structure } from "../bearing/structure.ts";
import { unitBearings } from "../bearing/unit-bearings.ts";
import { buildingOf } from "../geometry/building.ts";
import { collisionsOf, type Collision } from "../geometry/collisions.ts";
import { headSupports, type HeadSupport } from "./head-supports.ts";
import { runDown, type RunDown } from "./run-down.ts";
import { weightsOf, type UnitWeight } from "./weights.ts";

/** All that geometry and statics say of a scheme, from which marks, path and sums are read. */
export type Analysis = {
  readonly structure: Structure;
  readonly collisions: readonly Collision[];
  readonly footings: ReadonlyMap<string, Footing>;
  readonly carrying: ReadonlySet<string>;
  readonly supports: readonly HeadSupport[];
  readonly bearings: readonly UnitBearing[];
  readonly openCorners: (unitId: string) => readonly OpenCorner[];
  readonly weights: readonly UnitWeight[];
  readonly run: RunDown;
  /** The same without imposed loads, which cannot be counted on to hold anything down; `run` itself where there are none. */
  readonly emptyRun: RunDown;
};

/** Geometry, fabric, bearing and load path of a scheme, each step from the one before. */
export function analyse(scheme: Scheme): Analysis {
  const building = buildingOf(scheme);
  const structure = structureOf(building);
  const footings = new Map(building.posts.map((post) => [post.id, postFooting(structure, post)]));
  const carrying = carryingPosts(footings);
  const supports = building.posts.filter(({ id }) => carrying.has(id)).flatMap((post) => headSupports(structure, post));
  const bearings = unitBearings(structure, carrying);
  const weights = weightsOf(scheme);
  const run = runDown({ structure, bearings, footings, supports, weights });
  const empty = weights.map((weight) => ({ ...weight, imposedKn: 0 }));
  const emptyRun = weights.some(({ imposedKn }) => imposedKn > 0)
    ? runDown({ structure, bearings, footings, supports, weights: empty })
    : run;
  const corners = new Map(bearings.map(({ unitId, openCorners }) => [unitId, openCorners]));
  const openCorners = (unitId: string) => corners.get(unitId) ?? [];
  const collisions = collisionsOf(building);
  return { structure, collisions, footings, carrying, supports, bearings, openCorners, weights, run, emptyRun };
}
