import type { Container, FreeLoad, Lock, Opening, Override, Pad, Post, Scheme, Seat, Tie } from "@cornerway/schema";
import { LastMade } from "../numerics/last-made.ts";
import { postSizeMm } from "../catalog/post-size.ts";
import { placeContainer, planFrame, type PlacedContainer } from "./place.ts";
import { placeBeam, type PlacedBeam } from "./placed-beam.ts";
import { planGrid, type PlanGrid } from "./plan-grid.ts";
import { planRect, type PlanRect } from "./plan-rect.ts";

/** A container with its outline in plan and the openings cut in it. */
export type Unit = PlacedContainer & { readonly outline: PlanRect; readonly openings: readonly Opening[] };

export type PlacedPost = {
  readonly id: string;
  readonly outline: PlanRect;
  readonly xMm: number;
  readonly yMm: number;
  readonly footZMm: number;
  readonly headZMm: number;
  /** Its head as built against drawn, up positive; 0 where nothing is said. */
  readonly levelErrorMm: number;
  readonly post: Post;
};

export type PlacedPad = {
  readonly id: string;
  readonly outline: PlanRect;
  readonly xMm: number;
  readonly yMm: number;
  readonly topZMm: number;
  readonly depthMm: number;
  /** Its top as built against drawn, up positive; 0 where nothing is said. */
  readonly levelErrorMm: number;
  readonly pad: Pad;
};

/** The scheme as solids in the site frame, each kind findable by place. Lists are in the scheme's order, by id. */
export type Building = {
  readonly units: readonly Unit[];
  readonly posts: readonly PlacedPost[];
  readonly pads: readonly PlacedPad[];
  readonly beams: readonly PlacedBeam[];
  readonly seats: readonly Seat[];
  readonly ties: readonly Tie[];
  readonly locks: readonly Lock[];
  readonly overrides: readonly Override[];
  /** Of steel on steel and on pads, where nothing is locked or welded. */
  readonly friction: number;
  readonly freeLoads: readonly FreeLoad[];
  readonly unitById: ReadonlyMap<string, Unit>;
  readonly postById: ReadonlyMap<string, PlacedPost>;
  readonly padById: ReadonlyMap<string, PlacedPad>;
  readonly beamById: ReadonlyMap<string, PlacedBeam>;
  readonly unitGrid: PlanGrid;
  readonly postGrid: PlanGrid;
  readonly padGrid: PlanGrid;
  readonly beamGrid: PlanGrid;
  readonly groundZMm: number;
  readonly northMdeg: number;
};

/** The scheme placed in the site frame, mm. Throws where an opening names a container that is not there. */
export function buildingOf(scheme: Scheme): Building {
  const openings = openingsByUnit(scheme);
  const units = scheme.containers.map((container) => placeUnit(container, openings.get(container.id) ?? []));
  const posts = scheme.posts.map(placePost);
  const pads = scheme.pads.map(placePad);
  const beams = scheme.beams.map(placeBeam);
  return {
    units,
    posts,
    pads,
    beams,
    seats: scheme.seats,
    ties: scheme.ties,
    locks: scheme.locks,
    overrides: scheme.overrides,
    friction: scheme.basis.friction,
    freeLoads: scheme.freeLoads,
    unitById: new Map(units.map((unit) => [unit.id, unit])),
    postById: new Map(posts.map((post) => [post.id, post])),
    padById: new Map(pads.map((pad) => [pad.id, pad])),
    beamById: new Map(beams.map((beam) => [beam.id, beam])),
    unitGrid: planGrid(units.map(({ outline }) => outline)),
    postGrid: planGrid(posts.map(({ outline }) => outline)),
    padGrid: planGrid(pads.map(({ outline }) => outline)),
    beamGrid: planGrid(beams.map(({ outline }) => outline)),
    groundZMm: scheme.site.groundZUm / 1000,
    northMdeg: scheme.site.northMdeg,
  };
}

/** A container with its outline and openings in the site frame, mm. */
export const placeUnit = (container: Container, openings: readonly Opening[]): Unit =>
  placed.take(container, openings, () => {
    const solid = placeContainer(container);
    const x = solid.dimensions.lengthMm / 2;
    const y = solid.dimensions.widthMm / 2;
    return { ...solid, outline: planRect(solid.frame, -x, x, -y, y), openings };
  });

const placed = new LastMade<Unit>();

/** The units whose outline comes within a millimetre of a rectangle. */
export const unitsNear = (building: Building, rect: PlanRect): Unit[] =>
  picked(building.units, building.unitGrid.near(rect, 1));

export const postsNear = (building: Building, rect: PlanRect): PlacedPost[] =>
  picked(building.posts, building.postGrid.near(rect, 1));

export const padsNear = (building: Building, rect: PlanRect): PlacedPad[] =>
  picked(building.pads, building.padGrid.near(rect, 1));

export const beamsNear = (building: Building, rect: PlanRect): PlacedBeam[] =>
  picked(building.beams, building.beamGrid.near(rect, 1));

function picked<T>(from: readonly T[], indices: readonly number[]): T[] {
  const found: T[] = [];
  for (const index of indices) {
    const one = from[index];
    if (one !== undefined) found.push(one);
  }
  return found;
}

function openingsByUnit(scheme: Scheme): Map<string, Opening[]> {
  const byUnit = new Map<string, Opening[]>();
  for (const opening of scheme.openings) {
    const list = byUnit.get(opening.containerId);
    if (list === undefined) byUnit.set(opening.containerId, [opening]);
    else list.push(opening);
  }
  const known = new Set(scheme.containers.map(({ id }) => id));
  for (const id of byUnit.keys())
    if (!known.has(id)) throw new RangeError(`an opening is cut in ${id}, which is no container`);
  return byUnit;
}

function placePost(post: Post): PlacedPost {
  const half = postSizeMm(post.section) / 2;
  const frame = planFrame(post.xUm, post.yUm, post.baseZUm, post.turnMdeg);
  return {
    id: post.id,
    outline: planRect(frame, -half, half, -half, half),
    xMm: frame.xMm,
    yMm: frame.yMm,
    footZMm: frame.zMm,
    headZMm: post.topZUm / 1000,
    levelErrorMm: (post.levelErrorUm ?? 0) / 1000,
    post,
  };
}

function placePad(pad: Pad): PlacedPad {
  const frame = planFrame(pad.xUm, pad.yUm, pad.topZUm, pad.turnMdeg);
  const x = pad.lengthUm / 2000;
  const y = pad.widthUm / 2000;
  return {
    id: pad.id,
    outline: planRect(frame, -x, x, -y, y),
    xMm: frame.xMm,
    yMm: frame.yMm,
    topZMm: frame.zMm,
    depthMm: pad.depthUm / 1000,
    levelErrorMm: (pad.levelErrorUm ?? 0) / 1000,
    pad,
  };
}
