import type { NodeGraph } from "../numerics/elimination-order.ts";
import { frontTreeOf, type FrontTree } from "../numerics/front-tree.ts";
import type { KnownFronts } from "../numerics/known-fronts.ts";
import type { KnownOrders } from "../numerics/known-orders.ts";
import type { KnownTrees } from "../numerics/known-trees.ts";
import { placeDissection } from "../numerics/place-dissection.ts";
import { factorise } from "../numerics/sparse-ldlt.ts";
import type { SparseFactor } from "../numerics/sparse-factor.ts";
import { recoverInner, reduceLoads } from "../numerics/sparse-solve.ts";
import type { FreedomGraph } from "./freedom-graph.ts";
import type { LastNumbering } from "./last-numbering.ts";
import { looseMovements } from "./mechanism.ts";
import { numberFreedoms } from "./prepare.ts";
import { restoreRigidMotion } from "./restore-rigid-motion.ts";
import { retainedFreedoms } from "./retained-freedoms.ts";
import type { Substructure } from "./substructure.ts";
import type { Vector } from "../numerics/vector.ts";

/** A part reduced to the freedoms by which it is joined to others. */
export interface Condensed<P extends Substructure = Substructure> {
  /** What was condensed: large, so it may be made anew whenever it is asked for. */
  readonly part: P;
  /** Node numbers, ascending. */
  readonly retained: readonly number[];
  /** By which the part is joined to others, in order: 6·(place among the retained nodes) + 0…5. */
  readonly freedoms: Int32Array;
  /** Stiffness on these freedoms; full, row-major. */
  readonly stiffness: Float64Array;
  readonly factor: SparseFactor;
  readonly equationOf: Int32Array;
}

export type Condensation<P extends Substructure> =
  | { readonly stable: true; readonly condensed: Condensed<P> }
  /** Something inside moves (6 per node) though all freedoms by which it is joined are held. */
  | { readonly stable: false; readonly movements: readonly Float64Array[] };

/**
 * Static condensation: the factorisation of the part, stopped at the freedoms by which it is joined (Guyan, AIAA J. 3 (1965), from memory;
 * exact for static loads). `known` saves the work that parts condensed before have in common with this one.
 */
export function condense<P extends Substructure>(part: P, known: KnownWork | null = null): Condensation<P> {
  const nodeCount = part.places.length;
  const held = new Uint8Array(nodeCount * 6);
  const retained = new Uint8Array(nodeCount * 6);
  const freedoms = retainedFreedoms(part.retained, part.momentNodes);
  for (const freedom of freedoms) retained[(part.retained[Math.floor(freedom / 6)] ?? 0) * 6 + (freedom % 6)] = 1;
  const system = { nodeCount, elements: part.elements, held, sheetOnly: part.sheetOnly, bearings: [] };
  const order = (graph: FreedomGraph): FrontTree => treeOf(graph, placesOf(graph, part.places), known);
  const numbered = numberFreedoms(system, part.elements, held, retained, order, known?.last);
  const { elements, equationOf, tree, sparse } = numbered;
  const trusted = new Set<number>();
  for (;;) {
    const factor = known?.fronts.factorise(tree, sparse, trusted) ?? factorise(tree, sparse, trusted);
    const movements = looseMovements({ factor, elements, equationOf }, trusted);
    if (movements.length > 0) return { stable: false, movements };
    if (factor.loose.length === 0) return { stable: true, condensed: finish(part, freedoms, factor, equationOf) };
    factor.loose.forEach((equation) => trusted.add(equation));
  }
}

/** Work done for parts condensed before. */
export interface KnownWork {
  /** Of stretches. */
  readonly orders: KnownOrders;
  /** Of whole parts. */
  readonly trees: KnownTrees;
  readonly last: LastNumbering;
  readonly fronts: KnownFronts;
}

function treeOf(graph: FreedomGraph, places: readonly Vector[], known: KnownWork | null): FrontTree {
  if (known === null) return frontTreeOf(placeDissection(graph, places), graph);
  const orderOf = (stretch: NodeGraph) => known.orders.take(stretch);
  return known.trees.take(graph, places, () => frontTreeOf(placeDissection(graph, places, orderOf), graph));
}

/** The place of each vertex of the graph. */
function placesOf({ groupOf, weights }: FreedomGraph, places: readonly Vector[]): Vector[] {
  const found = Array.from(weights, (): Vector => [0, 0, 0]);
  for (let freedom = 0; freedom < groupOf.length; freedom++) {
    const group = groupOf[freedom] ?? -1;
    const place = group < 0 ? undefined : places[Math.floor(freedom / 6)];
    if (place !== undefined) found[group] = place;
  }
  return found;
}

function finish<P extends Substructure>(
  part: P,
  freedoms: Int32Array,
  factor: SparseFactor,
  equationOf: Int32Array,
): Condensed<P> {
  const { retained } = part;
  const places = retained.map((node) => part.places[node] ?? ([0, 0, 0] as const));
  const stiffness = restoreRigidMotion(factor.schur, places, freedoms);
  return { part, retained, freedoms, stiffness, factor, equationOf };
}

/** Loads inside a part: what reaches the freedoms by which it is joined, and what is needed to recover the inside. */
export interface CondensedLoads {
  /** Per load vector: the force on each of these freedoms, in order. */
  readonly onRetained: readonly Float64Array[];
  readonly reduced: Float64Array;
}

/** Brings loads on all freedoms of the part (one array per load vector, the part's axes) to those by which it is joined. */
export function condenseLoads({ factor, equationOf }: Condensed, loads: readonly Float64Array[]): CondensedLoads {
  const count = loads.length;
  const { equations, eliminated } = factor.tree;
  const reduced = new Float64Array(equations * count);
  loads.forEach((load, s) => {
    for (let f = 0; f < equationOf.length; f++) {
      const equation = equationOf[f] ?? -1;
      if (equation >= 0) reduced[equation * count + s] = load[f] ?? 0;
    }
  });
  reduceLoads(factor, reduced, count);
  const onRetained = loads.map((_, s) => {
    const forces = new Float64Array(equations - eliminated);
    for (let k = 0; k < forces.length; k++) forces[k] = reduced[(eliminated + k) * count + s] ?? 0;
    return forces;
  });
  return { onRetained, reduced };
}

/**
 * Movements of every freedom of the part under several load vectors, from the reduced loads on its inner equations
 * (reduced[equation·count + side]; overwritten) and the movements of the freedoms by which it is joined.
 */
export function recoverPart(
  { factor, equationOf }: Condensed,
  reduced: Float64Array,
  onRetained: readonly Float64Array[],
): Float64Array[] {
  const count = onRetained.length;
  const { eliminated } = factor.tree;
  onRetained.forEach((movement, s) => movement.forEach((value, k) => (reduced[(eliminated + k) * count + s] = value)));
  recoverInner(factor, reduced, count);
  return onRetained.map((_, s) => {
    const inside = new Float64Array(equationOf.length);
    for (let f = 0; f < equationOf.length; f++) {
      const equation = equationOf[f] ?? -1;
      if (equation >= 0) inside[f] = reduced[equation * count + s] ?? 0;
    }
    return inside;
  });
}
