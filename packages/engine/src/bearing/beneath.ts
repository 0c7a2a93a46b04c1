import {
  beamsNear,
  padsNear,
  postsNear,
  unitsNear,
  type PlacedPad,
  type PlacedPost,
  type Unit,
} from "../geometry/building.ts";
import type { PlacedBeam } from "../geometry/placed-beam.ts";
import { mostPackingMm, touchMm } from "../geometry/tolerances.ts";
import type { Structure } from "./structure.ts";

/** All that lies under one unit, near enough in height to bear it: looked up once, asked at every fitting and rail. */
export type Beneath = {
  readonly units: readonly Unit[];
  readonly posts: readonly PlacedPost[];
  readonly pads: readonly PlacedPad[];
  readonly beams: readonly PlacedBeam[];
};

/** `carrying` are the posts and beams that lead to the ground; others bear nothing. */
export function beneath({ building }: Structure, carrying: ReadonlySet<string>, unit: Unit): Beneath {
  const lowest = unit.baseZMm - mostPackingMm;
  const highest = unit.baseZMm + unit.dimensions.baseAboveFittingMm + mostPackingMm;
  const inReach = (topZMm: number) => topZMm >= lowest - touchMm && topZMm <= highest;
  return {
    units: unitsNear(building, unit.outline).filter(({ id, topZMm }) => id !== unit.id && inReach(topZMm)),
    posts: postsNear(building, unit.outline).filter(({ id, headZMm }) => carrying.has(id) && inReach(headZMm)),
    pads: padsNear(building, unit.outline).filter(({ topZMm }) => inReach(topZMm)),
    beams: beamsNear(building, unit.outline).filter(
      ({ id, from, to }) =>
        carrying.has(id) && Math.max(from.zMm, to.zMm) >= lowest - touchMm && Math.min(from.zMm, to.zMm) <= highest,
    ),
  };
}
