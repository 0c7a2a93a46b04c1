import type { Scheme } from "@cornerway/schema";
import { beamSupports, type BeamSupport } from "../bearing/beam-supports.ts";
import { carryingSteel } from "../bearing/carrying.ts";
import type { OpenCorner, UnitBearing } from "../bearing/contact.ts";
import { heldByLocks, lockPlaces, type LockPlace } from "../bearing/lock-places.ts";
import { postFooting, type Footing } from "../bearing/post-footing.ts";
import { seatPlace, type SeatPlace } from "../bearing/seat-place.ts";
import { structureOf, type Structure } from "../bearing/structure.ts";
import { unitBearings } from "../bearing/unit-bearings.ts";
import { buildingOf } from "../geometry/building.ts";
import { collisionsOf, type Collision } from "../geometry/collisions.ts";
import { headSupports, type HeadSupport } from "./head-supports.ts";
import { railsAlong, type RailBeam } from "./rail-beams.ts";
import { runDown, type RunDown } from "./run-down.ts";
import { weightsOf, type UnitWeight, type UsePressurePa } from "./weights.ts";

/** All that geometry and statics say of a scheme, from which marks, path and sums are read. */
export type Analysis = {
  readonly structure: Structure;
  readonly collisions: readonly Collision[];
  readonly footings: ReadonlyMap<string, Footing>;
  /** Posts and beams that lead to the ground. */
  readonly carrying: ReadonlySet<string>;
  readonly supports: readonly HeadSupport[];
  /** Top rails that beams run along under and hold up. */
  readonly railBeams: readonly RailBeam[];
  /** What holds up each beam that leads to the ground, from its start to its end. */
  readonly beamSupports: ReadonlyMap<string, readonly BeamSupport[]>;
  readonly seats: readonly SeatPlace[];
  readonly locks: readonly LockPlace[];
  readonly bearings: readonly UnitBearing[];
  readonly openCorners: (unitId: string) => readonly OpenCorner[];
  readonly weights: readonly UnitWeight[];
  readonly run: RunDown;
  /** The same without imposed loads, which cannot be counted on to hold anything down; `run` itself where there are none. */
  readonly emptyRun: RunDown;
};

/**
 * Geometry, fabric, bearing and load path of a scheme, each step from the one before. `usePressurePa` is the adopted code's
 * load of a use, for floors and roofs on which none is drawn; without it such uses weigh nothing.
 */
export function analyse(scheme: Scheme, usePressurePa: UsePressurePa = () => 0): Analysis {
  const building = buildingOf(scheme);
  const structure = structureOf(building);
  const footings = new Map(building.posts.map((post) => [post.id, postFooting(structure, post)]));
  const drawn = new Map(building.beams.map((beam) => [beam.id, beamSupports(structure, beam)]));
  const steel = carryingSteel(footings, drawn);
  const { carrying } = steel;
  const supports = building.posts.filter(({ id }) => carrying.has(id)).flatMap((post) => headSupports(structure, post));
  const railBeams = building.beams.filter(({ id }) => carrying.has(id)).flatMap((beam) => railsAlong(structure, beam));
  const seats = building.seats.map((seat) => seatPlace(structure, seat));
  const resting = unitBearings(structure, carrying, seatsByUnit(seats));
  const locks = lockPlaces(building.locks, resting);
  const bearings = heldByLocks(resting, locks);
  const weights = weightsOf(scheme, usePressurePa);
  const input = { structure, bearings, footings, supports, railBeams, beamSupports: steel.supports, weights };
  const run = runDown({ ...input, loaded: true });
  const emptyRun = weights.some(({ imposedKn }) => imposedKn !== 0) ? runDown({ ...input, loaded: false }) : run;
  const corners = new Map(bearings.map(({ unitId, openCorners }) => [unitId, openCorners]));
  const openCorners = (unitId: string) => corners.get(unitId) ?? [];
  const collisions = collisionsOf(building);
  return {
    structure,
    collisions,
    footings,
    carrying,
    supports,
    railBeams,
    beamSupports: steel.supports,
    seats,
    locks,
    bearings,
    openCorners,
    weights,
    run,
    emptyRun,
  };
}

function seatsByUnit(places: readonly SeatPlace[]): (unitId: string) => readonly SeatPlace[] {
  const byUnit = new Map<string, SeatPlace[]>();
  for (const place of places) {
    const list = byUnit.get(place.seat.upperId);
    if (list === undefined) byUnit.set(place.seat.upperId, [place]);
    else list.push(place);
  }
  return (unitId) => byUnit.get(unitId) ?? [];
}
