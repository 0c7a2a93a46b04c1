import type { Element } from "../elements/element.ts";
import { frontTree, type FrontTree } from "../numerics/front-tree.ts";
import { integerRoom } from "../numerics/number-room.ts";
import type { FactorMemory } from "../numerics/factor-memory.ts";
import { factorise } from "../numerics/sparse-ldlt.ts";
import type { SparseElement } from "../numerics/sparse-factor.ts";
import { BorderUnknowns } from "./border-unknowns.ts";
import { freedomGraph, nodeGraph, type FreedomGraph } from "./freedom-graph.ts";
import { idleDirections, type IdleDirection } from "./idle-directions.ts";
import type { LastNumbering, Numbering } from "./last-numbering.ts";
import { looseMovements } from "./mechanism.ts";
import type { Prepared } from "./prepared.ts";
import { actingElements, heldFreedoms, type ContactState, type System } from "./system.ts";

export type Preparation =
  | { readonly stable: true; readonly prepared: Prepared }
  | { readonly stable: false; readonly movements: readonly Float64Array[] };

/**
 * Factorises the system in this state, or returns the movements (6 per node) that nothing resists. `memory` saves work where
 * the same building was factorised before, `last` where its elements are on the same freedoms as those numbered last.
 */
export function prepare(
  system: System,
  state: ContactState,
  memory: FactorMemory | null = null,
  last: LastNumbering | null = null,
): Preparation {
  const acting = actingElements(system, state);
  const held = heldFreedoms(system, state);
  const treeOf = (graph: FreedomGraph): FrontTree => memory?.tree(graph) ?? frontTree(graph);
  const numbered = numberFreedoms(system, acting, held, null, treeOf, last);
  const { elements, equationOf, idle, tree, sparse } = numbered;
  const trusted = new Set<number>();
  for (;;) {
    const factor = memory === null ? factorise(tree, sparse, trusted) : memory.factorise(tree, sparse, trusted);
    if (factor.loose.length === 0) {
      const further = new BorderUnknowns(elements, equationOf, factor);
      return {
        stable: true,
        prepared: { system, state, elements, held, equationOf, factor, update: null, idle, further },
      };
    }
    const movements = looseMovements({ factor, elements, equationOf }, trusted);
    if (movements.length > 0) return { stable: false, movements };
    factor.loose.forEach((equation) => trusted.add(equation));
  }
}

export interface Numbered {
  readonly elements: readonly Element[];
  readonly equationOf: Int32Array;
  readonly idle: readonly IdleDirection[];
  readonly tree: FrontTree;
  readonly sparse: readonly SparseElement[];
}

/**
 * Orders and numbers the free, resisted freedoms; those that are `retained` (1 for each), if any, come last and in order.
 * `last` may know how.
 */
export function numberFreedoms(
  system: System,
  acting: readonly Element[],
  held: Uint8Array,
  retained: Uint8Array | null,
  treeOf: (graph: FreedomGraph) => FrontTree,
  last: LastNumbering | null = null,
): Numbered {
  const idle = idleDirections(acting, held, system.sheetOnly, retained);
  const elements = [...acting, ...idle.filter(isOblique).map(stiffener)];
  const active = activeFreedoms(elements, held, retained);
  for (const direction of idle) if (!isOblique(direction)) active[direction.node * 6 + axisOf(direction)] = 0;
  const number = (): Numbering => numbering(elements, active, retained, treeOf);
  const { tree, equationOf, equations } = last?.take(elements, active, retained, number) ?? number();
  const sparse = elements.map(({ matrix }, n): SparseElement => ({ equations: equations[n] ?? NO_EQUATIONS, matrix }));
  return { elements, equationOf, idle, tree, sparse };
}

const NO_EQUATIONS = new Int32Array(0);

function numbering(
  elements: readonly Element[],
  active: Uint8Array,
  retained: Uint8Array | null,
  treeOf: (graph: FreedomGraph) => FrontTree,
): Numbering {
  const graph = retained === null ? freedomGraph(elements, active) : nodeGraph(elements, active, retained);
  const tree = treeOf(graph);
  const equationOf = equationNumbers(graph.groupOf, tree);
  return { tree, equationOf, equations: elements.map(({ freedoms }) => equationsOf(freedoms, equationOf)) };
}

/** The equation of each of these freedoms, −1 where it has none. */
export function equationsOf(freedoms: Int32Array, equationOf: Int32Array): Int32Array {
  const equations = integerRoom(freedoms.length);
  for (let f = 0; f < freedoms.length; f++) equations[f] = equationOf[freedoms[f] ?? 0] ?? -1;
  return equations;
}

function activeFreedoms(elements: readonly Element[], held: Uint8Array, retained: Uint8Array | null): Uint8Array {
  const active = new Uint8Array(held.length);
  for (const { freedoms, acts = true } of elements)
    if (acts)
      for (let f = 0; f < freedoms.length; f++) {
        const freedom = freedoms[f] ?? 0;
        active[freedom] = held[freedom] ? 0 : 1;
      }
  retained?.forEach((flag, freedom) => flag && (active[freedom] = 1));
  return active;
}

/** The freedoms of a group are numbered in a row. */
function equationNumbers(groupOf: Int32Array, { firstEquation }: FrontTree): Int32Array {
  const next = firstEquation.slice();
  const equationOf = new Int32Array(groupOf.length).fill(-1);
  for (let f = 0; f < groupOf.length; f++) {
    const group = groupOf[f] ?? -1;
    if (group < 0) continue;
    equationOf[f] = next[group] ?? 0;
    next[group] = (next[group] ?? 0) + 1;
  }
  return equationOf;
}

function isOblique({ direction }: IdleDirection): boolean {
  let parts = 0;
  for (let c = 0; c < 6; c++) if (direction[c] !== 0) parts++;
  return parts > 1;
}

function axisOf({ direction }: IdleDirection): number {
  let axis = 0;
  while (axis < 5 && direction[axis] === 0) axis++;
  return axis;
}

/** Holds an oblique idle direction; its size is of no account, since nothing acts along it. */
function stiffener({ node, direction }: IdleDirection): Element {
  const matrix = new Float64Array(36);
  for (let i = 0; i < 6; i++) for (let j = 0; j < 6; j++) matrix[i * 6 + j] = (direction[i] ?? 0) * (direction[j] ?? 0);
  return { freedoms: Int32Array.from({ length: 6 }, (_, c) => node * 6 + c), matrix };
}
