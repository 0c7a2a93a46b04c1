import type { FittingName, PointMm } from "@cornerway/schema";
import type { BeamSupport } from "../bearing/beam-supports.ts";
import type { Contact, Target, UnitBearing } from "../bearing/contact.ts";
import type { Footing } from "../bearing/post-footing.ts";
import type { Structure } from "../bearing/structure.ts";
import type { Rail } from "../fabric/fabric-of.ts";
import type { PlacedPost, Unit } from "../geometry/building.ts";
import { toLocal } from "../geometry/place.ts";
import { onBeam, type PlacedBeam } from "../geometry/placed-beam.ts";
import { beamStatics, type BeamLoad, type BeamStatics } from "./beam-statics.ts";
import type { HeadSupport } from "./head-supports.ts";
import type { RailBeam } from "./rail-beams.ts";
import { loadingOrder, type Handing } from "./loading-order.ts";
import { railLever, type RailShare } from "./rail-lever.ts";
import type { PointForce } from "./resultant.ts";
import { unitStatics, type UnitStatics } from "./unit-statics.ts";
import type { UnitWeight } from "./weights.ts";

/** Everything the run-down stands on: who bears on what, and what every unit weighs. */
export type RunDownInput = {
  readonly structure: Structure;
  readonly bearings: readonly UnitBearing[];
  readonly footings: ReadonlyMap<string, Footing>;
  readonly supports: readonly HeadSupport[];
  readonly railBeams: readonly RailBeam[];
  readonly beamSupports: ReadonlyMap<string, readonly BeamSupport[]>;
  readonly weights: readonly UnitWeight[];
  /** With imposed loads, or without them. */
  readonly loaded: boolean;
};

/** A load on a top rail and what it is handed to. */
export type RailLoad = {
  readonly unitId: string;
  readonly rail: Rail;
  readonly uMm: number;
  readonly at: PointMm;
  readonly forceKn: number;
  readonly fromId: string;
  readonly shares: readonly RailShare[];
};

/** What one unit takes from above and hands on. */
export type UnitRun = UnitStatics & {
  readonly unitId: string;
  readonly contacts: readonly Contact[];
  /** Load entering at each top fitting, kN. */
  readonly cornersKn: ReadonlyMap<FittingName, number>;
};

/** What comes down on one beam, with who brings it, and how its supports share it. */
export type BeamRun = BeamStatics & {
  readonly beamId: string;
  readonly loads: readonly (BeamLoad & { readonly fromId: string })[];
  readonly supports: readonly BeamSupport[];
};

export type Reaction = { readonly elementId: string; readonly at: PointMm; readonly forceKn: number };

export type RunDown = {
  readonly units: readonly UnitRun[];
  readonly railLoads: readonly RailLoad[];
  readonly postsKn: ReadonlyMap<string, number>;
  /** Beams that lead to the ground, in the order of the scheme. */
  readonly beams: readonly BeamRun[];
  readonly reactions: readonly Reaction[];
};

/** Every load from where it acts to the ground, from the top down, kN. */
export function runDown(input: RunDownInput): RunDown {
  const state = emptyState(input);
  const { building } = input.structure;
  for (const id of orderOf(input)) {
    const unit = building.unitById.get(id);
    const post = building.postById.get(id);
    if (unit !== undefined) runUnit(input, state, unit);
    if (post !== undefined) runPost(input, state, post);
    const beam = building.beamById.get(id);
    if (beam !== undefined) runBeam(input, state, beam);
  }
  return {
    units: building.units.flatMap(({ id }) => state.units.get(id) ?? []),
    railLoads: state.railLoads,
    postsKn: state.postsKn,
    beams: building.beams.flatMap(({ id }) => state.beams.get(id) ?? []),
    reactions: state.reactions,
  };
}

type State = {
  readonly corners: Map<string, Map<FittingName, number>>;
  readonly loose: Map<string, PointForce[]>;
  readonly postsKn: Map<string, number>;
  readonly units: Map<string, UnitRun>;
  readonly beamLoads: Map<string, BeamRun["loads"][number][]>;
  readonly beams: Map<string, BeamRun>;
  readonly contacts: ReadonlyMap<string, readonly Contact[]>;
  readonly own: ReadonlyMap<string, readonly PointForce[]>;
  readonly railLoads: RailLoad[];
  readonly reactions: Reaction[];
};

const emptyState = ({ bearings, weights, loaded }: RunDownInput): State => ({
  corners: new Map(),
  loose: new Map(),
  postsKn: new Map(),
  units: new Map(),
  beamLoads: new Map(),
  beams: new Map(),
  contacts: new Map(bearings.map(({ unitId, contacts }) => [unitId, contacts])),
  own: new Map(weights.map(({ id, weight, imposed }) => [id, loaded ? [...weight, ...imposed] : weight])),
  railLoads: [],
  reactions: [],
});

function orderOf(input: RunDownInput): string[] {
  const { bearings, footings, supports, railBeams, beamSupports } = input;
  const { building } = input.structure;
  const handings: Handing[] = [
    ...bearings.flatMap(({ unitId, contacts }) =>
      contacts.flatMap(({ target }) => (target.on === "ground" ? [] : [{ from: unitId, to: target.elementId }])),
    ),
    ...supports.map(({ unitId, postId }) => ({ from: unitId, to: postId })),
    ...railBeams.map(({ unitId, beam }) => ({ from: unitId, to: beam.id })),
  ];
  for (const { id } of building.posts) {
    const footing = footings.get(id);
    if (footing !== undefined && "elementId" in footing) handings.push({ from: id, to: footing.elementId });
  }
  for (const [id, own] of beamSupports) for (const { target } of own) handings.push({ from: id, to: target.elementId });
  return loadingOrder(
    [...building.units, ...building.posts, ...building.beams].map(({ id }) => id),
    handings,
  );
}

function runUnit(input: RunDownInput, state: State, unit: Unit): void {
  const contacts = state.contacts.get(unit.id) ?? [];
  const cornersKn = state.corners.get(unit.id) ?? new Map<FittingName, number>();
  const statics = unitStatics(
    unit,
    input.structure.fabric(unit.id),
    contacts,
    state.own.get(unit.id) ?? [],
    cornersKn,
    state.loose.get(unit.id) ?? [],
  );
  state.units.set(unit.id, { ...statics, unitId: unit.id, contacts, cornersKn });
  contacts.forEach((contact, at) => {
    handOn(input, state, unit.id, contact, statics.forcesKn[at] ?? 0);
  });
}

/** What a unit or beam gives to what is under it. */
function handOn(
  input: RunDownInput,
  state: State,
  fromId: string,
  { target, at }: { readonly target: Target; readonly at: PointMm },
  forceKn: number,
): void {
  switch (target.on) {
    case "fitting":
      return addToCorner(input, state, target.elementId, target.fitting, at, forceKn);
    case "rail":
      return loadRail(input, state, {
        unitId: target.elementId,
        rail: target.rail,
        uMm: target.uMm,
        at,
        forceKn,
        fromId,
      });
    case "beam":
      return addToBeam(state, target.elementId, { uMm: target.uMm, forceKn, fromId });
    case "post":
      return addToPost(state, target.elementId, forceKn);
    case "pad":
      state.reactions.push({ elementId: target.elementId, at, forceKn });
      return;
    case "ground":
      state.reactions.push({ elementId: fromId, at, forceKn });
  }
}

function runPost(input: RunDownInput, state: State, post: PlacedPost): void {
  const forceKn = state.postsKn.get(post.id) ?? 0;
  const footing = input.footings.get(post.id);
  const at = { xMm: post.xMm, yMm: post.yMm, zMm: post.footZMm };
  if (footing === undefined || forceKn === 0) return;
  if (footing.on === "pad") state.reactions.push({ elementId: footing.elementId, at, forceKn });
  if (footing.on === "ground") state.reactions.push({ elementId: post.id, at, forceKn });
  if (footing.on === "post") addToPost(state, footing.elementId, forceKn);
  if (footing.on === "beam") addToBeam(state, footing.elementId, { uMm: footing.uMm, forceKn, fromId: post.id });
  if (footing.on === "fitting") addToCorner(input, state, footing.elementId, footing.fitting, at, forceKn);
  if (footing.on === "top rail") {
    const { elementId: unitId, rail, uMm } = footing;
    loadRail(input, state, { unitId, rail, uMm, at, forceKn, fromId: post.id });
  }
}

function runBeam(input: RunDownInput, state: State, beam: PlacedBeam): void {
  const supports = input.beamSupports.get(beam.id) ?? [];
  const loads = state.beamLoads.get(beam.id) ?? [];
  if (supports.length === 0) return;
  const statics = beamStatics(supports, loads);
  state.beams.set(beam.id, { ...statics, beamId: beam.id, loads, supports });
  supports.forEach(({ uMm, target }, at) => {
    handOn(input, state, beam.id, { target, at: onBeam(beam, uMm) }, statics.reactionsKn[at] ?? 0);
  });
}

function addToBeam({ beamLoads }: State, beamId: string, load: BeamRun["loads"][number]): void {
  const list = beamLoads.get(beamId);
  if (list === undefined) beamLoads.set(beamId, [load]);
  else list.push(load);
}

function loadRail(input: RunDownInput, state: State, load: Omit<RailLoad, "shares">): void {
  const { structure } = input;
  const unit = structure.building.unitById.get(load.unitId);
  if (unit === undefined) return;
  const piece = structure.fabric(unit.id).topRails[load.rail].find(({ u0, u1 }) => u0 <= load.uMm && load.uMm <= u1);
  const shares = railLever(unit, piece, load.rail, load.uMm, load.forceKn, input);
  state.railLoads.push({ ...load, shares });
  shiftTo(state, unit, load.at, load.forceKn);
  for (const { end, forceKn } of shares) {
    if (end.to === "post") {
      const post = structure.building.postById.get(end.postId);
      addToPost(state, end.postId, forceKn);
      if (post !== undefined) shiftTo(state, unit, post, -forceKn);
    } else if (end.to === "beam") {
      const beam = structure.building.beamById.get(end.beamId);
      addToBeam(state, end.beamId, { uMm: end.beamUMm, forceKn, fromId: unit.id });
      if (beam !== undefined) shiftTo(state, unit, onBeam(beam, end.beamUMm), -forceKn);
    } else giveCorner(state, unit, end.fitting, forceKn);
  }
}

/** A load that comes down on a top fitting, perhaps off its centre: the post takes it, the unit the couple. */
function addToCorner(
  { structure }: RunDownInput,
  state: State,
  unitId: string,
  fitting: FittingName,
  at: { xMm: number; yMm: number },
  forceKn: number,
): void {
  const unit = structure.building.unitById.get(unitId);
  if (unit === undefined) return;
  shiftTo(state, unit, at, forceKn);
  giveCorner(state, unit, fitting, forceKn);
}

function giveCorner(state: State, unit: Unit, fitting: FittingName, forceKn: number): void {
  const own = state.corners.get(unit.id) ?? new Map<FittingName, number>();
  own.set(fitting, (own.get(fitting) ?? 0) + forceKn);
  state.corners.set(unit.id, own);
  const top = unit.topFittings.find(({ name }) => name === fitting);
  if (top !== undefined) shiftTo(state, unit, top.at, -forceKn);
}

/**
 * A force the whole unit has to balance. A load handed on elsewhere than where it came down is written here twice, +
 * where it came down and − where it was handed to: what is left is the couple of the shift.
 */
function shiftTo({ loose }: State, unit: Unit, at: { xMm: number; yMm: number }, forceKn: number): void {
  const { xMm, yMm } = toLocal(unit.frame, { xMm: at.xMm, yMm: at.yMm, zMm: 0 });
  const list = loose.get(unit.id);
  if (list === undefined) loose.set(unit.id, [{ forceKn, xMm, yMm }]);
  else list.push({ forceKn, xMm, yMm });
}

function addToPost({ postsKn }: State, postId: string, forceKn: number): void {
  postsKn.set(postId, (postsKn.get(postId) ?? 0) + forceKn);
}
