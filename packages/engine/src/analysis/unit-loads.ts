import type { FrameSystem } from "./frame-system.ts";
import { toLocalComponents, uniformLoadForces, type Member } from "../elements/member.ts";
import type { ModelCase, Six, Triple } from "../model/analytical-model.ts";
import type { Vector } from "../numerics/vector.ts";
import { condenseLoads, type CondensedLoads, type Condensed } from "./condense.ts";
import { sharesUnder, type LoadBasis } from "./load-basis.ts";
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
  combos.forEach((combo, s) =>
    sharesUnder(basis, combo).forEach((share, k) => {
      if (share === 0) return;
      for (let e = 0; e < equations; e++)
        reduced[e * sides + s] = (reduced[e * sides + s] ?? 0) + share * (condensed.reduced[e * count + k] ?? 0);
    }),
  );
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
  const parts = basis.loads.map((loads) => nodalLoads(part, loads));
  ON_LINES.set(members, { basis, parts });
  return parts;
}

/** The last basis on these lines. */
const ON_LINES = new WeakMap<
  FrameSystem["members"],
  { readonly basis: LoadBasis; readonly parts: readonly NodalLoads[] }
>();

function nodalLoads({ frame, places }: UnitElements, { nodal = [], beam_udl = [] }: ModelCase): NodalLoads {
  const forces = new Float64Array(places.length * 6);
  const atOrigin = new ActionAtOrigin();
  for (const { node, F } of nodal) {
    const n = frame.nodeOf.get(node) ?? NaN;
    for (let c = 0; c < 6; c++) forces[n * 6 + c] = (forces[n * 6 + c] ?? 0) + (F[c] ?? 0);
    atOrigin.addNodal(places[n] ?? ORIGIN, F);
  }
  for (const { beam, q } of beam_udl) {
    const member = frame.members.get(beam);
    if (member === undefined) throw new Error(`the container has no beam "${beam}"`);
    for (const axis of AXIS_NUMBERS)
      if (q[axis] !== 0) addAt(forces, member.freedoms, unitForces(member, axis), q[axis]);
    atOrigin.addUniform(member, places[member.facts.nodes[0]] ?? ORIGIN, q);
  }
  return { forces, resultant: atOrigin.sum() };
}

const AXIS_NUMBERS = [0, 1, 2] as const;

function addAt(forces: Float64Array, freedoms: Int32Array, values: Float64Array, factor: number): void {
  for (let f = 0; f < freedoms.length; f++) {
    const freedom = freedoms[f] ?? 0;
    forces[freedom] = (forces[freedom] ?? 0) + factor * (values[f] ?? 0);
  }
}

const ORIGIN: Vector = [0, 0, 0];

/** The resultant of loads, added up one after the other; number by number, since there are thousands of them. */
class ActionAtOrigin {
  private readonly force = new Float64Array(3);
  private readonly moment = new Float64Array(3);

  addNodal(place: Vector, F: Six): void {
    this.add(place[0], place[1], place[2], F[0], F[1], F[2], F[3], F[4], F[5]);
  }

  /** q·L at mid-length (`uniformLoadAction`). */
  addUniform({ facts: { axes, armI } }: Member, start: Vector, q: Triple): void {
    const arm = armI ?? ORIGIN;
    const half = axes.lengthMm / 2;
    this.add(
      start[0] + arm[0] + axes.x[0] * half,
      start[1] + arm[1] + axes.x[1] * half,
      start[2] + arm[2] + axes.x[2] * half,
      q[0] * axes.lengthMm,
      q[1] * axes.lengthMm,
      q[2] * axes.lengthMm,
      0,
      0,
      0,
    );
  }

  private add(
    x: number,
    y: number,
    z: number,
    a: number,
    b: number,
    c: number,
    aboutX: number,
    aboutY: number,
    aboutZ: number,
  ): void {
    const { force: sum, moment: turned } = this;
    sum[0] = (sum[0] ?? 0) + a;
    sum[1] = (sum[1] ?? 0) + b;
    sum[2] = (sum[2] ?? 0) + c;
    turned[0] = (turned[0] ?? 0) + (aboutX + (y * c - z * b));
    turned[1] = (turned[1] ?? 0) + (aboutY + (z * a - x * c));
    turned[2] = (turned[2] ?? 0) + (aboutZ + (x * b - y * a));
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
