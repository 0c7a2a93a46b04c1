import { addUniformLoad, toLocalComponents } from "../elements/member.ts";
import { FREEDOM_NAMES, type AnalyticalModel, type ModelCase } from "../model/analytical-model.ts";
import type { FrameSystem } from "./frame-system.ts";
import type { Vector } from "../numerics/vector.ts";
import { uniformLoadAction, type Action } from "./equilibrium.ts";
import type { LoadVector } from "./solve-movement.ts";
import { largest } from "./vectors.ts";

/** One combination as the solution takes it, and as the equilibrium check sees it. */
export interface CombinedLoads extends LoadVector {
  /** Uniform load on each member, N/mm in its local axes. */
  readonly onMembers: ReadonlyMap<string, readonly [number, number, number]>;
  /** The loads themselves, before they are brought to nodes. */
  readonly actions: readonly Action[];
  /** Members whose own releases leave them free to move under their load. */
  readonly unresisted: readonly string[];
  /** How far links have slipped in x and y, mm; supports that slip have settled. */
  readonly slips?: ReadonlyMap<string, readonly [number, number]>;
}

/** Adds up the cases of a combination, in the order in which the combination names them. */
export function combinedLoads(
  frame: FrameSystem,
  model: AnalyticalModel,
  combo: Readonly<Record<string, number>>,
): CombinedLoads {
  const freedoms = frame.system.nodeCount * 6;
  const nodal = new Float64Array(freedoms);
  const settlement = new Float64Array(freedoms);
  const uniform = new Map<string, Vector>();
  for (const [name, factor] of Object.entries(combo)) {
    const loads = model.cases[name];
    if (loads === undefined) throw new Error(`the line model has no case "${name}"`);
    addCase(frame, loads, factor, nodal, settlement, uniform);
  }
  return gather(frame, nodal, settlement, uniform);
}

function addCase(
  frame: FrameSystem,
  loads: ModelCase,
  factor: number,
  nodal: Float64Array,
  settlement: Float64Array,
  uniform: Map<string, Vector>,
): void {
  const first = (id: string): number => (frame.nodeOf.get(id) ?? NaN) * 6;
  for (const { node, F } of loads.nodal ?? []) F.forEach((value, c) => add(nodal, first(node) + c, factor * value));
  for (const { node, dof, value } of loads.settle ?? [])
    add(settlement, first(node) + FREEDOM_NAMES.indexOf(dof), factor * value);
  for (const { beam, q } of loads.beam_udl ?? []) {
    const [x, y, z] = uniform.get(beam) ?? [0, 0, 0];
    uniform.set(beam, [x + factor * q[0], y + factor * q[1], z + factor * q[2]]);
  }
}

function add(values: Float64Array, index: number, value: number): void {
  values[index] = (values[index] ?? 0) + value;
}

function gather(
  frame: FrameSystem,
  nodal: Float64Array,
  settlement: Float64Array,
  uniform: ReadonlyMap<string, Vector>,
): CombinedLoads {
  const forces = nodal.slice();
  const actions = nodalActions(frame, nodal);
  const onMembers = new Map<string, readonly [number, number, number]>();
  const unresisted: string[] = [];
  for (const [id, load] of uniform) {
    const m = frame.members.get(id);
    const start = m && frame.places[m.facts.nodes[0]];
    if (m === undefined || start === undefined) throw new Error(`the line model has no beam "${id}"`);
    const local = toLocalComponents(m.facts.axes, load);
    onMembers.set(id, local);
    addUniformLoad(m, local, forces);
    actions.push(uniformLoadAction(m, start, load));
    if (m.drivenBy.some((axis) => local[axis] !== 0)) unresisted.push(id);
  }
  return { forces, settlement, onMembers, actions, unresisted };
}

function nodalActions({ places }: FrameSystem, nodal: Float64Array): Action[] {
  const actions: Action[] = [];
  if (largest(nodal) === 0) return actions;
  places.forEach((place, node) => {
    const [a = 0, b = 0, c = 0, d = 0, e = 0, f = 0] = nodal.subarray(node * 6, node * 6 + 6);
    if (a !== 0 || b !== 0 || c !== 0 || d !== 0 || e !== 0 || f !== 0)
      actions.push({ place, force: [a, b, c], moment: [d, e, f] });
  });
  return actions;
}
