import { addUniformLoad, toLocalComponents } from "../elements/member.ts";
import type { ModelCase, Triple } from "../model/analytical-model.ts";
import { turned, type Turn } from "../model/turn.ts";
import { plus, times, type Vector } from "../numerics/vector.ts";
import type { BuildingSystem, CondensedUnit } from "./building-system.ts";
import { combinedLoads, type CombinedLoads } from "./combined-loads.ts";
import { condenseLoads, type CondensedLoads } from "./condense.ts";
import { uniformLoadAction, type Action } from "./equilibrium.ts";
import { turnVector } from "./turn-stiffness.ts";
import type { UnitElements } from "./unit-elements.ts";

/** The loads of one container by case, brought to its retained nodes once and combined afterwards. */
export interface UnitLoads {
  readonly cases: readonly string[];
  readonly condensed: CondensedLoads;
  /** Per case: the loads themselves, in global axes. */
  readonly actions: readonly (readonly Action[])[];
}

export function unitLoads({ unit, turn, condensed }: CondensedUnit): UnitLoads {
  const cases = Object.keys(unit.loads);
  const parts = cases.map((name) => nodalLoads(condensed.part, unit.loads[name] ?? {}));
  return {
    cases,
    condensed: condenseLoads(
      condensed,
      parts.map(({ forces }) => forces),
    ),
    actions: parts.map(({ actions }) => actions.map((action) => placed(action, turn, unit.at))),
  };
}

/** One combination on the whole building: what acts between the containers, and what the containers pass on. */
export function buildingLoads(
  { frame, skeleton, units }: BuildingSystem,
  loads: readonly UnitLoads[],
  combo: Readonly<Record<string, number>>,
): CombinedLoads {
  const known = Object.fromEntries(Object.entries(combo).filter(([name]) => Object.hasOwn(skeleton.cases, name)));
  const between = combinedLoads(frame, skeleton, known);
  const forces = between.forces.slice();
  const actions = [...between.actions];
  units.forEach(({ firstNode, turn }, u) => {
    const own = loads[u];
    own?.cases.forEach((name, c) => {
      const factor = combo[name] ?? 0;
      if (factor === 0) return;
      const passedOn = turnVector(own.condensed.onRetained[c] ?? new Float64Array(), turn);
      passedOn.forEach((value, f) => (forces[firstNode * 6 + f] = (forces[firstNode * 6 + f] ?? 0) + factor * value));
      for (const { place, force, moment } of own.actions[c] ?? []) {
        actions.push({ place, force: times(force, factor), moment: times(moment, factor) });
      }
    });
  });
  return { ...between, forces, actions };
}

/** The container's loads of one case on its freedoms, in its own axes. */
function nodalLoads({ frame, places }: UnitElements, { nodal = [], beam_udl = [] }: ModelCase) {
  const forces = new Float64Array(places.length * 6);
  const actions: Action[] = [];
  for (const { node, F } of nodal) {
    const n = frame.nodeOf.get(node) ?? NaN;
    F.forEach((value, c) => (forces[n * 6 + c] = (forces[n * 6 + c] ?? 0) + value));
    actions.push({ place: places[n] ?? [0, 0, 0], force: [F[0], F[1], F[2]], moment: [F[3], F[4], F[5]] });
  }
  for (const { beam, q } of beam_udl) {
    const m = frame.members.get(beam);
    if (m === undefined) throw new Error(`the container has no beam "${beam}"`);
    addUniformLoad(m, toLocalComponents(m.facts.axes, q), forces);
    actions.push(uniformLoadAction(m, places[m.facts.nodes[0]] ?? [0, 0, 0], q));
  }
  return { forces, actions: [total(actions)] };
}

/** Many actions as one at the origin, which is all the equilibrium check needs. */
function total(actions: readonly Action[]): Action {
  let force: Vector = [0, 0, 0];
  let moment: Vector = [0, 0, 0];
  for (const action of actions) {
    const [x, y, z] = action.place;
    const [a, b, c] = action.force;
    force = plus(force, action.force);
    moment = plus(moment, plus(action.moment, [y * c - z * b, z * a - x * c, x * b - y * a]));
  }
  return { place: [0, 0, 0], force, moment };
}

function placed({ place, force, moment }: Action, turn: Turn, at: Triple): Action {
  return { place: plus(turned(turn, place), at), force: turned(turn, force), moment: turned(turn, moment) };
}
