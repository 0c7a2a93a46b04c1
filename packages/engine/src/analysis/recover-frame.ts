import { addElementForces } from "../elements/element.ts";
import { memberEndForces } from "../elements/member.ts";
import { panelFlow } from "../elements/shear-panel.ts";
import { groundSpring } from "../elements/spring.ts";
import type { AnalyticalModel, ModelLink } from "../model/analytical-model.ts";
import type { FrameSystem } from "./frame-system.ts";
import type { CombinedLoads } from "./combined-loads.ts";
import { resultant, type Action } from "./equilibrium.ts";
import type { FrameSolution } from "./frame-result.ts";
import type { Prepared } from "./prepared.ts";
import { unbalanced, type Movement } from "./solve-movement.ts";

interface Settled {
  readonly prepared: Prepared;
  readonly result: Movement;
  readonly rounds: number;
}

/** Everything the exchange format asks for, from the movement of the nodes. */
export function recoverFrame(
  frame: FrameSystem,
  model: AnalyticalModel,
  settled: Settled,
  loads: CombinedLoads,
): FrameSolution {
  const { prepared, result, rounds } = settled;
  const reactions = reactionsOf(frame, model, settled, loads);
  return {
    iterations: rounds,
    displacements: record(frame.nodeIds, (_, node) => sixAt(result.movement, node)),
    reactions: Object.fromEntries(reactions),
    memberEndForces: record([...frame.members.keys()], (id) => endForces(frame, id, result, loads)),
    panelFlows: record([...frame.panels.keys()], (id) => flow(frame, id, result)),
    links: Object.fromEntries(
      model.links.map((link) => [link.id, linkForces(frame, link, settled, loads.slips?.get(link.id))]),
    ),
    open: openBearings(frame, prepared),
    equilibrium: resultant([...loads.actions, ...reactions.map(([id, forces]) => asAction(frame, id, forces))]),
    residual: residualOf(settled, loads, reactions),
  };
}

function record<T>(ids: readonly string[], value: (id: string, index: number) => T): Record<string, T> {
  return Object.fromEntries(ids.map((id, index) => [id, value(id, index)]));
}

function sixAt(values: Float64Array, node: number): number[] {
  return Array.from(values.subarray(node * 6, node * 6 + 6), (value) => value + 0);
}

function reactionsOf(
  frame: FrameSystem,
  model: AnalyticalModel,
  { prepared, result }: Settled,
  { forces }: CombinedLoads,
): [string, number[]][] {
  const byNode = new Map<number, Float64Array>();
  const at = (id: string): [number, Float64Array] => {
    const node = frame.nodeOf.get(id) ?? NaN;
    const sum = byNode.get(node) ?? new Float64Array(6);
    byNode.set(node, sum);
    return [node, sum];
  };
  for (const support of model.supports) {
    const [node, sum] = at(support.node);
    for (let c = 0; c < 6; c++) {
      const f = node * 6 + c;
      if (prepared.held[f]) sum[c] = (sum[c] ?? 0) + (result.answered[f] ?? 0) - (forces[f] ?? 0);
    }
  }
  for (const spring of model.springs) {
    if (spring.j !== undefined) continue;
    const [node, sum] = at(spring.i);
    const pushed = new Float64Array(result.movement.length);
    addElementForces(groundSpring(node, spring.k), result.movement, pushed);
    for (let c = 0; c < 6; c++) sum[c] = (sum[c] ?? 0) - (pushed[node * 6 + c] ?? 0);
  }
  return [...byNode].map(([node, sum]) => [frame.nodeIds[node] ?? "", [...sum]]);
}

function endForces(frame: FrameSystem, id: string, { movement }: Movement, { onMembers }: CombinedLoads): number[] {
  const m = frame.members.get(id);
  return m === undefined ? [] : [...memberEndForces(m, movement, onMembers.get(id) ?? [0, 0, 0])];
}

function flow(frame: FrameSystem, id: string, { movement }: Movement): number {
  const panel = frame.panels.get(id);
  return panel === undefined ? 0 : panelFlow(panel, movement);
}

const UPRIGHT = 2;

function linkForces(
  frame: FrameSystem,
  link: ModelLink,
  { prepared, result }: Settled,
  slipped: readonly number[] = [],
): number[] {
  const bearing = frame.linkBearings.get(link.id);
  const open = bearing !== undefined && prepared.state.open[bearing] === 1;
  const [i, j] = [frame.nodeOf.get(link.i) ?? NaN, frame.nodeOf.get(link.j) ?? NaN];
  return link.k.map((k, c) => {
    if (open && c === UPRIGHT) return 0;
    return k * ((result.movement[i * 6 + c] ?? 0) - (result.movement[j * 6 + c] ?? 0) + (slipped[c] ?? 0)) + 0;
  });
}

function openBearings({ supportBearings, linkBearings }: FrameSystem, { state }: Prepared): FrameSolution["open"] {
  const opened = (bearings: ReadonlyMap<string, number>): string[] => {
    return [...bearings].filter(([, b]) => state.open[b] === 1).map(([id]) => id);
  };
  return { supports: opened(supportBearings), links: opened(linkBearings) };
}

function asAction(
  { nodeOf, places }: FrameSystem,
  id: string,
  [a = 0, b = 0, c = 0, d = 0, e = 0, f = 0]: readonly number[],
): Action {
  const place = places[nodeOf.get(id) ?? -1] ?? ([0, 0, 0] as const);
  return { place, force: [a, b, c], moment: [d, e, f] };
}

/** The largest load, or, where only supports settle, the largest reaction. */
function residualOf(
  { prepared, result }: Settled,
  loads: CombinedLoads,
  reactions: readonly [string, number[]][],
): number {
  const load = loads.forces.reduce((most, value) => Math.max(most, Math.abs(value)), 0);
  const most = load > 0 ? load : Math.max(0, ...reactions.flatMap(([, forces]) => forces.map(Math.abs)));
  return most > 0 ? unbalanced(prepared, result, loads) / most : 0;
}
