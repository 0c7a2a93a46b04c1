import type { Contact } from "../bearing/contact.ts";
import type { Footing } from "../bearing/post-footing.ts";
import type { Analysis } from "../load-path/analysis.ts";
import type { Unit } from "../geometry/building.ts";
import { LastMade } from "../numerics/last-made.ts";
import { modelledBeams } from "./modelled-beams.ts";
import { plannedTies, type PlannedTie } from "./tie-plan.ts";
import type { UnitPoint } from "./unit-point.ts";
import type { EndName, SideName, UnitPost } from "./unit-lines.ts";

/** A place along an added beam, mm from its start. */
export type BeamPoint = { readonly beam: string; readonly uMm: number };

/** What is under a bearing. A beam that is not modelled stands for the ground under it. */
export type Below = { readonly point: UnitPoint } | { readonly post: string } | BeamPoint | { readonly ground: string };

/** One bearing: a container's point, the foot of a post that stands by itself or a place under a beam, on what is under it. */
export interface PlannedBearing {
  readonly above: UnitPoint | { readonly post: string } | BeamPoint;
  readonly below: Below;
  /** The lock, made connection, hold-down or seat by which it also pulls and holds in plan. */
  readonly heldById?: string;
  /** The seat drawn here. */
  readonly seatId?: string;
  /** The end of a beam framed into the side of what holds it up. */
  readonly framed?: true;
}

export interface BearingPlan {
  readonly bearings: readonly PlannedBearing[];
  /** Posts that stand in a side wall, by unit; the others stand by themselves. */
  readonly inWalls: ReadonlyMap<string, readonly (Omit<UnitPost, "section"> & { readonly postId: string })[]>;
  readonly freePosts: readonly string[];
  /** Added beams that something stands on. */
  readonly beams: readonly string[];
  readonly ties: readonly PlannedTie[];
}

/** Every bearing of the building as the model places it, in the scheme's order. */
export const bearingPlan = (analysis: Analysis): BearingPlan => plans.take(analysis, [], () => planOf(analysis));

const plans = new LastMade<BearingPlan>();

function planOf(analysis: Analysis): BearingPlan {
  const { structure, bearings, footings, supports, carrying } = analysis;
  const { building } = structure;
  const inWalls = new Map<string, (Omit<UnitPost, "section"> & { postId: string })[]>();
  const wallOf = new Map<string, UnitPoint>();
  for (const { postId, unitId, rail, uMm } of supports) {
    const unit = building.unitById.get(unitId);
    if (unit === undefined || (rail !== "left" && rail !== "right") || wallOf.has(postId)) continue;
    const u = fromPostAxis(unit, rail, uMm);
    if (atCorner(u, unit)) continue;
    const list = inWalls.get(unitId) ?? [];
    inWalls.set(unitId, list);
    list.push({ postId, side: rail, u, footed: carrying.has(postId) && footings.get(postId)?.on !== "bottom rail" });
    wallOf.set(postId, { unitId, seat: { side: rail, rail: "top", u } });
  }
  const postTop = (postId: string): Below => {
    const wall = wallOf.get(postId);
    return wall === undefined ? { post: postId } : { point: wall };
  };
  const beams = modelledBeams(analysis);
  const beamAt = (id: string, uMm: number): Below => (beams.has(id) ? { beam: id, uMm } : { ground: id });
  const tops = { post: postTop, beam: beamAt };
  const fromUnits = bearings.flatMap(({ contacts }) =>
    contacts.map((contact) => plannedContact(analysis, contact, tops)),
  );
  const feet = building.posts.flatMap(({ id }) => plannedFoot(analysis, id, wallOf.get(id), footings.get(id), tops));
  const underBeams = [...beams].flatMap((id) => plannedUnderBeam(analysis, id, tops));
  const planned = once([...fromUnits, ...feet, ...underBeams]);
  const freePosts = building.posts
    .map(({ id }) => id)
    .filter((id) => planned.some(({ below }) => "post" in below && below.post === id));
  // a post that carries nothing is no part of the model
  const used = planned.filter(({ above }) => !("post" in above) || freePosts.includes(above.post));
  return { bearings: used, inWalls, freePosts, beams: [...beams], ties: plannedTies(building) };
}

/** The post that stands at this point: by itself, or in the wall of its unit. */
export function postAt(point: PlannedBearing["above"], inWalls: BearingPlan["inWalls"]): string | undefined {
  if ("post" in point) return point.post;
  if (!("seat" in point)) return undefined;
  const { side, u } = point.seat;
  return inWalls.get(point.unitId)?.find((post) => post.side === side && Math.abs(post.u - u) < 1)?.postId;
}

/** A seat this near to a post axis is the corner itself: half a fitting's length, ISO 1161 (178 mm, from memory). */
const CORNER_MM = 89;

function atCorner(u: number, { dimensions }: Unit): boolean {
  return u < CORNER_MM || u > dimensions.holeSpacingLengthwiseMm - CORNER_MM;
}

/** From the outer face of the fittings, as openings are measured, to the post axis. */
function fromPostAxis({ dimensions }: Unit, rail: SideName | EndName, uMm: number): number {
  const along = rail === "left" || rail === "right";
  const [outer, holes] = along
    ? [dimensions.lengthMm, dimensions.holeSpacingLengthwiseMm]
    : [dimensions.widthMm, dimensions.holeSpacingCrosswiseMm];
  return uMm - (outer - holes) / 2;
}

/** What a bearing on the head of a post, or on a beam, goes by. */
type Tops = { readonly post: (id: string) => Below; readonly beam: (id: string, uMm: number) => Below };

function plannedContact({ structure }: Analysis, contact: Contact, tops: Tops): PlannedBearing {
  const unit = structure.building.unitById.get(contact.unitId);
  if (unit === undefined) throw new RangeError(`no container ${contact.unitId} in this building`);
  const { heldById, seatId } = contact;
  const bears = {
    above: underPoint(unit, contact),
    ...(heldById !== undefined && { heldById }),
    ...(seatId !== undefined && { seatId }),
  };
  const { target } = contact;
  if (target.on === "ground") return { ...bears, below: { ground: "ground" } };
  if (target.on === "pad") return { ...bears, below: { ground: target.elementId } };
  if (target.on === "beam") return { ...bears, below: tops.beam(target.elementId, target.uMm) };
  if (target.on === "post") return { ...bears, below: tops.post(target.elementId) };
  const lower = structure.building.unitById.get(target.elementId);
  if (lower === undefined) throw new RangeError(`no container ${target.elementId} in this building`);
  const point = target.on === "rail" ? railPoint(lower, target.rail, target.uMm) : null;
  if (target.on === "fitting") return { ...bears, below: { point: fittingPoint(lower, target.fitting) } };
  if (point === null) throw new RangeError(`container ${unit.id} bears on nothing known`);
  return { ...bears, below: { point } };
}

function underPoint(unit: Unit, { fitting, side, localXMm }: Contact): UnitPoint {
  const u = localXMm + unit.dimensions.holeSpacingLengthwiseMm / 2;
  if (fitting !== undefined && !fitting.endsWith("-inner")) return cornerPoint(unit.id, localXMm, side, "foot");
  if (atCorner(u, unit)) return cornerPoint(unit.id, localXMm, side, "foot");
  return { unitId: unit.id, seat: { side, rail: "bottom", u } };
}

function cornerPoint(unitId: string, localXMm: number, side: SideName, level: "foot" | "head"): UnitPoint {
  return { unitId, corner: { end: localXMm < 0 ? "front" : "door", side, level } };
}

function fittingPoint(unit: Unit, fitting: string): UnitPoint {
  const placed = unit.topFittings.find(({ name }) => name === fitting);
  if (placed === undefined) throw new RangeError(`container ${unit.id} has no fitting ${fitting}`);
  const side: SideName = placed.localYMm > 0 ? "left" : "right";
  if (!fitting.endsWith("-inner")) return cornerPoint(unit.id, placed.localXMm, side, "head");
  return {
    unitId: unit.id,
    seat: { side, rail: "top", u: placed.localXMm + unit.dimensions.holeSpacingLengthwiseMm / 2 },
  };
}

function railPoint(unit: Unit, rail: SideName | EndName, uMm: number): UnitPoint {
  const u = fromPostAxis(unit, rail, uMm);
  const { holeSpacingLengthwiseMm: length, holeSpacingCrosswiseMm: width } = unit.dimensions;
  if (rail === "left" || rail === "right") {
    return atCorner(u, unit)
      ? cornerPoint(unit.id, u - length / 2, rail, "head")
      : { unitId: unit.id, seat: { side: rail, rail: "top", u } };
  }
  const near = u < CORNER_MM ? "right" : u > width - CORNER_MM ? "left" : null;
  if (near !== null) return { unitId: unit.id, corner: { end: rail, side: near, level: "head" } };
  return { unitId: unit.id, seat: { side: rail, rail: "top", u } };
}

/** Where the foot of a post goes on down: under the wall it stands in, or by itself. */
function plannedFoot(
  { structure, carrying }: Analysis,
  id: string,
  wall: UnitPoint | undefined,
  footing: Footing | undefined,
  tops: Tops,
): PlannedBearing[] {
  if (footing === undefined || !carrying.has(id)) return [];
  const below = footingBelow(structure.building.unitById, footing, tops);
  if (below === null) return [];
  if (wall === undefined || !("seat" in wall)) return [{ above: { post: id }, below }];
  return [{ above: { unitId: wall.unitId, seat: { ...wall.seat, rail: "bottom" } }, below }];
}

function footingBelow(units: ReadonlyMap<string, Unit>, footing: Footing, tops: Tops): Below | null {
  if (footing.on === "ground") return { ground: "ground" };
  if (footing.on === "pad") return { ground: footing.elementId };
  if (footing.on === "beam") return tops.beam(footing.elementId, footing.uMm);
  if (footing.on === "post") return tops.post(footing.elementId);
  if (footing.on !== "fitting" && footing.on !== "top rail") return null;
  const unit = units.get(footing.elementId);
  if (unit === undefined) return null;
  return {
    point: footing.on === "fitting" ? fittingPoint(unit, footing.fitting) : railPoint(unit, footing.rail, footing.uMm),
  };
}

/** What a beam stands on, from its start to its end: steel is bolted or welded to what it bears on, so it also pulls and holds. */
function plannedUnderBeam({ structure, beamSupports }: Analysis, beam: string, tops: Tops): PlannedBearing[] {
  return (beamSupports.get(beam) ?? []).flatMap(({ uMm, target, how }): PlannedBearing[] => {
    const below = target.on === "rail" ? ({ ...target, on: "top rail" } as const) : target;
    const planned = footingBelow(structure.building.unitById, below, tops);
    return planned === null
      ? []
      : [{ above: { beam, uMm }, below: planned, heldById: beam, ...(how === "into" && { framed: true }) }];
  });
}

/** A post set under a rail is found from both sides: once is enough. */
function once(bearings: readonly PlannedBearing[]): PlannedBearing[] {
  const seen = new Set<string>();
  return bearings.filter((bearing) => {
    const key = JSON.stringify(bearing, (_, value: unknown) => (typeof value === "number" ? Math.round(value) : value));
    if (seen.has(key)) return false;
    seen.add(key);
    return true;
  });
}
