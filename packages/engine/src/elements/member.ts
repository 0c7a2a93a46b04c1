import type { ModelSection } from "../model/analytical-model.ts";
import { numberRoom } from "../numerics/number-room.ts";
import type { Vector } from "../numerics/vector.ts";
import { type Element, freedomsOf } from "./element.ts";
import type { MemberAxes } from "../model/member-axes.ts";
import { fixedEndForces, memberStiffness } from "./member-stiffness.ts";
import { release } from "./release.ts";
import { endTranslation, moveForces, moveStiffness } from "./rigid-arm.ts";

export interface MemberFacts {
  readonly nodes: readonly [number, number];
  readonly axes: MemberAxes;
  readonly section: ModelSection;
  /** Local freedoms 0…11 the ends do not transmit. */
  readonly released: readonly number[];
  readonly armI: Vector | null;
  readonly armJ: Vector | null;
}

/** A straight member with releases and rigid arms; one line of the model. */
export interface Member extends Element {
  readonly holdsNodes: boolean;
  readonly facts: MemberFacts;
  /** Local load directions that drive a movement the member's own releases leave free. */
  readonly drivenBy: readonly number[];
  /** Local fixed-end forces under a unit load along each local axis, twelve each; null without releases. */
  readonly fixed: Float64Array | null;
}

export function member(facts: MemberFacts): Member {
  const drivenBy = writeLocal(facts);
  const fixed = facts.released.length > 0 ? numberRoom(36) : null;
  if (fixed !== null) FIXED.forEach((unit, axis) => fixed.set(unit, axis * 12));
  const matrix = toGlobal(LOCAL, facts.axes);
  if (facts.armI) moveStiffness(matrix, 12, 0, facts.armI);
  if (facts.armJ) moveStiffness(matrix, 12, 6, facts.armJ);
  return { freedoms: freedomsOf(facts.nodes), matrix, holdsNodes: holdsNodes(facts), facts, drivenBy, fixed };
}

/** The member between other nodes, alike in all else. */
export function withNodes({ matrix, holdsNodes, drivenBy, fixed }: Member, facts: MemberFacts): Member {
  return { freedoms: freedomsOf(facts.nodes), matrix, holdsNodes, facts, drivenBy, fixed };
}

/** Fixed at one end, a member with all its stiffnesses lets the other end nowhere. */
const holdsNodes = ({ section: { E, G, A, Iy, Iz, J }, released }: MemberFacts): boolean =>
  released.length === 0 && Math.min(E, G, A, Iy, Iz, J) > 0;

/** Components in local axes of a vector given in global axes. */
export function toLocalComponents({ x, y, z }: MemberAxes, v: Vector): [number, number, number] {
  return [
    x[0] * v[0] + x[1] * v[1] + x[2] * v[2],
    y[0] * v[0] + y[1] * v[1] + y[2] * v[2],
    z[0] * v[0] + z[1] * v[1] + z[2] * v[2],
  ];
}

/** Local fixed-end forces under `load`, N/mm along the local axes, after releases. */
export function fixedForces(m: Member, load: readonly [number, number, number]): Float64Array {
  return addFixedForces(m, load, new Float64Array(12));
}

function addFixedForces(
  { facts, fixed }: Member,
  load: readonly [number, number, number],
  f: Float64Array,
): Float64Array {
  if (fixed === null) {
    for (const axis of AXES) if (load[axis] !== 0) fixedEndForces(axis, facts.axes.lengthMm, load[axis], f);
    return f;
  }
  for (const axis of AXES) for (let i = 0; i < 12; i++) f[i] = (f[i] ?? 0) + (fixed[axis * 12 + i] ?? 0) * load[axis];
  return f;
}

/** Fixed-end forces on their way to the nodes; rewritten before every use. */
const ON_ENDS = new Float64Array(12);

/** Adds the nodal forces equivalent to a uniform load (N/mm of length, local axes) to `forces` (global freedoms). */
export function addUniformLoad(m: Member, load: readonly [number, number, number], forces: Float64Array): void {
  const nodal = uniformLoadForces(m, load);
  m.freedoms.forEach((freedom, i) => (forces[freedom] = (forces[freedom] ?? 0) + (nodal[i] ?? 0)));
}

/** The nodal forces equivalent to a uniform load (N/mm of length, local axes) on the member's own freedoms. */
export function uniformLoadForces(m: Member, load: readonly [number, number, number]): Float64Array {
  const { axes, armI, armJ } = m.facts;
  const f = addFixedForces(m, load, ON_ENDS.fill(0));
  const nodal = new Float64Array(12);
  for (let block = 0; block < 12; block += 3) {
    for (let c = 0; c < 3; c++) {
      nodal[block + c] = -(
        (axes.x[c] ?? 0) * (f[block] ?? 0) +
        (axes.y[c] ?? 0) * (f[block + 1] ?? 0) +
        (axes.z[c] ?? 0) * (f[block + 2] ?? 0)
      );
    }
  }
  if (armI) moveForces(nodal, 0, armI);
  if (armJ) moveForces(nodal, 6, armJ);
  return nodal;
}

/** The twelve forces on the member at end i, then end j, in local axes (N, N·mm), under movement and uniform load. */
export function memberEndForces(
  m: Member,
  movement: Float64Array,
  load: readonly [number, number, number],
): Float64Array {
  writeLocal(m.facts);
  return underLocal(m, movement, load);
}

/** `memberEndForces` under several movements, each with its load; the same bits. */
export function memberEndForcesOfSides(
  m: Member,
  movements: readonly Float64Array[],
  loads: readonly (readonly [number, number, number])[],
): Float64Array[] {
  writeLocal(m.facts);
  return movements.map((movement, s) => underLocal(m, movement, loads[s] ?? NO_LOAD));
}

const NO_LOAD = [0, 0, 0] as const;

/** The twelve end forces under a movement of each of the member's freedoms by one, freedom by freedom: [freedom·12 + force]. */
export function endForcesByFreedom({ facts }: Member): Float64Array {
  writeLocal(facts);
  const forces = new Float64Array(144);
  for (let f = 0; f < 12; f++) {
    const u = localMovement({ freedoms: OWN_FREEDOMS, facts }, UNIT_MOVEMENTS[f] ?? LOCAL_MOVEMENT);
    for (let j = 0; j < 12; j++) {
      const moved = u[j] ?? 0;
      if (moved === 0) continue;
      for (let i = 0; i < 12; i++) forces[f * 12 + i] = (forces[f * 12 + i] ?? 0) + (LOCAL[i * 12 + j] ?? 0) * moved;
    }
  }
  return forces;
}

const OWN_FREEDOMS = Int32Array.from({ length: 12 }, (_, f) => f);
const UNIT_MOVEMENTS = Array.from({ length: 12 }, (_, f) =>
  Float64Array.from({ length: 12 }, (__, n) => (n === f ? 1 : 0)),
);

/** With the member's stiffness in LOCAL. */
function underLocal(m: Member, movement: Float64Array, load: readonly [number, number, number]): Float64Array {
  const u = localMovement(m, movement);
  const f = fixedForces(m, load);
  for (let i = 0; i < 12; i++) {
    let sum = 0;
    for (let j = 0; j < 12; j++) sum += (LOCAL[i * 12 + j] ?? 0) * (u[j] ?? 0);
    f[i] = (f[i] ?? 0) + sum;
  }
  return f;
}

/** Stiffness and unit fixed-end forces of the member at hand, after releases; rewritten before every use. */
const LOCAL = new Float64Array(144);
const FIXED = [new Float64Array(12), new Float64Array(12), new Float64Array(12)] as const;

const AXES = [0, 1, 2] as const;

function writeLocal({ section, axes, released }: MemberFacts): number[] {
  memberStiffness(section, axes.lengthMm, LOCAL);
  if (released.length === 0) return [];
  for (const axis of AXES) fixedEndForces(axis, axes.lengthMm, 1, FIXED[axis].fill(0));
  return release(LOCAL, FIXED, released);
}

/** Movement of both ends in local axes; rewritten before every use. */
const LOCAL_MOVEMENT = new Float64Array(12);

function localMovement(
  { freedoms, facts: { axes, armI, armJ } }: Pick<Member, "freedoms" | "facts">,
  movement: Float64Array,
): Float64Array {
  moveEnd(0, armI, freedoms, axes, movement);
  moveEnd(6, armJ, freedoms, axes, movement);
  return LOCAL_MOVEMENT;
}

function moveEnd(
  end: number,
  arm: Vector | null,
  freedoms: Int32Array,
  axes: MemberAxes,
  movement: Float64Array,
): void {
  const translation: Vector = [
    movement[freedoms[end] ?? 0] ?? 0,
    movement[freedoms[end + 1] ?? 0] ?? 0,
    movement[freedoms[end + 2] ?? 0] ?? 0,
  ];
  const rotation: Vector = [
    movement[freedoms[end + 3] ?? 0] ?? 0,
    movement[freedoms[end + 4] ?? 0] ?? 0,
    movement[freedoms[end + 5] ?? 0] ?? 0,
  ];
  LOCAL_MOVEMENT.set(toLocalComponents(axes, arm ? endTranslation(translation, rotation, arm) : translation), end);
  LOCAL_MOVEMENT.set(toLocalComponents(axes, rotation), end + 3);
}

/** Room for one block on its way; rewritten before every use. */
const HALF = new Float64Array(9);

/** Rᵀ·K·R in 3 × 3 blocks, upper half computed and mirrored. */
function toGlobal(local: Float64Array, axes: MemberAxes): Float64Array {
  const k = numberRoom(144);
  const r = [...axes.x, ...axes.y, ...axes.z];
  const half = HALF;
  for (let a = 0; a < 12; a += 3) {
    for (let b = a; b < 12; b += 3) {
      rotateRight(local, a, b, r, half);
      rotateLeft(half, r, k, a, b);
    }
  }
  for (let i = 0; i < 12; i++) for (let j = 0; j < i; j++) k[i * 12 + j] = k[j * 12 + i] ?? 0;
  return k;
}

function rotateRight(local: Float64Array, a: number, b: number, r: readonly number[], half: Float64Array): void {
  for (let i = 0; i < 3; i++) {
    const row = (a + i) * 12 + b;
    const k0 = local[row] ?? 0;
    const k1 = local[row + 1] ?? 0;
    const k2 = local[row + 2] ?? 0;
    for (let j = 0; j < 3; j++) half[i * 3 + j] = k0 * (r[j] ?? 0) + k1 * (r[3 + j] ?? 0) + k2 * (r[6 + j] ?? 0);
  }
}

function rotateLeft(half: Float64Array, r: readonly number[], k: Float64Array, a: number, b: number): void {
  for (let i = 0; i < 3; i++) {
    for (let j = 0; j < 3; j++) {
      k[(a + i) * 12 + b + j] =
        (r[i] ?? 0) * (half[j] ?? 0) + (r[3 + i] ?? 0) * (half[3 + j] ?? 0) + (r[6 + i] ?? 0) * (half[6 + j] ?? 0);
    }
  }
}
