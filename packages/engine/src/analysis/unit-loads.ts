import type { FrameSystem } from "./frame-system.ts";
import { toLocalComponents, uniformLoadForces, type Member } from "../elements/member.ts";
import type { Vector } from "../numerics/vector.ts";
import { condenseLoads, type CondensedLoads, type Condensed } from "./condense.ts";
import { ARM_MM, isLoaded, sharesUnder, type LoadBasis } from "./load-basis.ts";
import type { Action } from "./equilibrium.ts";
import type { UnitElements } from "./unit-elements.ts";

/** The loads of one container in its own axes, brought to its retained nodes once and combined afterwards. */
export interface LocalUnitLoads {
  readonly basis: LoadBasis;
  /** Of each load of the basis. */
  readonly condensed: CondensedLoads;
  /** Of each load of the basis: its resultant at the container's origin, in its own axes. */
  readonly resultants: readonly Action[];
}

export function localUnitLoads(basis: LoadBasis, condensed: Condensed<UnitElements>): LocalUnitLoads {
  const { part } = condensed;
  const parts = nodalLoadsOf(basis, part);
  return {
    basis,
    condensed: condenseLoads(
      condensed,
      parts.map(({ forces }) => forces),
    ),
    resultants: parts.map(({ resultant }) => resultant),
  };
}

/** Reduced loads of combinations, equation by equation: those of a combination are the combination of the reduced loads. */
export function reducedUnder(
  { basis, condensed }: LocalUnitLoads,
  combos: readonly Readonly<Record<string, number>>[],
  equations: number,
): Float64Array {
  const [sides, count] = [combos.length, basis.loads.length];
  const reduced = new Float64Array(equations * sides);
  const shares = combos.map((combo) => sharesUnder(basis, combo));
  for (let e = 0; e < equations; e++)
    for (let s = 0; s < sides; s++) {
      const own = shares[s] ?? NOTHING;
      let sum = 0;
      for (let k = 0; k < count; k++) if (own[k] !== 0) sum += (own[k] ?? 0) * (condensed.reduced[e * count + k] ?? 0);
      reduced[e * sides + s] = sum;
    }
  return reduced;
}

/** Forces on the twelve freedoms of a line under 1 N/mm along an axis of the container; those of one stiffness are one kind. */
function unitForces(member: Member, axis: 0 | 1 | 2): Float64Array {
  const known = UNDER_UNIT_LOADS[axis].get(member.matrix);
  if (known !== undefined) return known;
  const made = uniformLoadForces(member, toLocalComponents(member.facts.axes, AXES[axis]));
  UNDER_UNIT_LOADS[axis].set(member.matrix, made);
  return made;
}

/** Along each axis, by the stiffness that all lines of a kind share. */
const UNDER_UNIT_LOADS = [
  new WeakMap<Float64Array, Float64Array>(),
  new WeakMap<Float64Array, Float64Array>(),
  new WeakMap<Float64Array, Float64Array>(),
] as const;

const AXES = [
  [1, 0, 0],
  [0, 1, 0],
  [0, 0, 1],
] as const satisfies readonly Vector[];

type NodalLoads = { readonly forces: Float64Array; readonly resultant: Action };

/** Of each load of the basis. The same lines take them alike whatever the sheets between them. */
function nodalLoadsOf(basis: LoadBasis, part: UnitElements): readonly NodalLoads[] {
  const { members } = part.frame;
  const known = ON_LINES.get(members);
  if (known?.basis === basis) return known.parts;
  const parts = nodalLoads(part, basis);
  ON_LINES.set(members, { basis, parts });
  return parts;
}

/** The last basis on these lines. */
const ON_LINES = new WeakMap<
  FrameSystem["members"],
  { readonly basis: LoadBasis; readonly parts: readonly NodalLoads[] }
>();

/** Line by line for all loads, in each load the nodes before the lines. */
function nodalLoads({ frame, places }: UnitElements, { slots, loads }: LoadBasis): NodalLoads[] {
  const forces = loads.map(() => new Float64Array(places.length * 6));
  const atOrigin = loads.map(() => new ActionAtOrigin());
  slots.nodes.forEach((at, id) => {
    const node = frame.nodeOf.get(id);
    if (node === undefined) throw new Error(`the container has no node "${id}"`);
    loads.forEach((load, k) => {
      if (!isLoaded(load, at, 6)) return;
      addNode(forces[k] ?? NOTHING, node, load, at);
      atOrigin[k]?.addNode(places[node] ?? ORIGIN, load, at);
    });
  });
  slots.lines.forEach((at, id) => {
    const member = frame.members.get(id);
    if (member === undefined) throw new Error(`the container has no beam "${id}"`);
    const start = places[member.facts.nodes[0]] ?? ORIGIN;
    loads.forEach((load, k) => {
      if (!isLoaded(load, at, 3)) return;
      addLine(forces[k] ?? NOTHING, member, load, at);
      atOrigin[k]?.addLine(member, start, load, at);
    });
  });
  return forces.map((own, k) => ({ forces: own, resultant: (atOrigin[k] ?? new ActionAtOrigin()).sum() }));
}

const NOTHING = new Float64Array(0);

function addNode(forces: Float64Array, node: number, load: Float64Array, at: number): void {
  for (let c = 0; c < 6; c++) {
    const value = load[at + c] ?? 0;
    forces[node * 6 + c] = (forces[node * 6 + c] ?? 0) + (c < 3 ? value : ARM_MM * value);
  }
}

function addLine(forces: Float64Array, member: Member, load: Float64Array, at: number): void {
  for (const axis of AXIS_NUMBERS) {
    if (load[at + axis] !== 0) addAt(forces, member.freedoms, unitForces(member, axis), load, at + axis);
  }
}

const AXIS_NUMBERS = [0, 1, 2] as const;

function addAt(
  forces: Float64Array,
  freedoms: Int32Array,
  values: Float64Array,
  load: Float64Array,
  slot: number,
): void {
  const factor = load[slot] ?? 0;
  for (let f = 0; f < freedoms.length; f++) {
    const freedom = freedoms[f] ?? 0;
    forces[freedom] = (forces[freedom] ?? 0) + factor * (values[f] ?? 0);
  }
}

const ORIGIN: Vector = [0, 0, 0];

/** Place, force and moment of the load at hand; numbers handed from one function to another are boxed (measured). */
const AT_HAND = new Float64Array(9);

/** The resultant of loads, added up one after the other. */
class ActionAtOrigin {
  private readonly force = new Float64Array(3);
  private readonly moment = new Float64Array(3);

  addNode(place: Vector, load: Float64Array, at: number): void {
    for (let c = 0; c < 3; c++) {
      AT_HAND[c] = place[c] ?? 0;
      AT_HAND[c + 3] = load[at + c] ?? 0;
      AT_HAND[c + 6] = ARM_MM * (load[at + c + 3] ?? 0);
    }
    this.addAtHand();
  }

  /** q·L at mid-length (`uniformLoadAction`). */
  addLine({ facts: { axes, armI } }: Member, start: Vector, load: Float64Array, at: number): void {
    const arm = armI ?? ORIGIN;
    for (let c = 0; c < 3; c++) {
      AT_HAND[c] = (start[c] ?? 0) + (arm[c] ?? 0) + (axes.x[c] ?? 0) * (axes.lengthMm / 2);
      AT_HAND[c + 3] = (load[at + c] ?? 0) * axes.lengthMm;
      AT_HAND[c + 6] = 0;
    }
    this.addAtHand();
  }

  private addAtHand(): void {
    for (let c = 0; c < 3; c++) {
      const next = (c + 1) % 3;
      const after = (c + 2) % 3;
      const turning =
        (AT_HAND[next] ?? 0) * (AT_HAND[after + 3] ?? 0) - (AT_HAND[after] ?? 0) * (AT_HAND[next + 3] ?? 0);
      this.force[c] = (this.force[c] ?? 0) + (AT_HAND[c + 3] ?? 0);
      this.moment[c] = (this.moment[c] ?? 0) + ((AT_HAND[c + 6] ?? 0) + turning);
    }
  }

  sum(): Action {
    const { force, moment } = this;
    return {
      place: ORIGIN,
      force: [force[0] ?? 0, force[1] ?? 0, force[2] ?? 0],
      moment: [moment[0] ?? 0, moment[1] ?? 0, moment[2] ?? 0],
    };
  }
}
