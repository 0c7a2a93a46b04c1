import type { NodeGraph } from "./elimination-order.ts";
import type { FrontTree } from "./front-tree.ts";
import { sameNumbers } from "./same-graph.ts";
import type { Vector } from "./vector.ts";

/**
 * Orders of work for whole parts met lately: the same part with other stiffness has the same graph in the same place, and
 * comparing takes a twentieth of ordering anew (measured).
 */
export class KnownTrees {
  private kept: readonly Kept[] = [];

  take(graph: NodeGraph, places: readonly Vector[], order: () => FrontTree): FrontTree {
    const numbers = numbersOf(graph);
    const coordinates = coordinatesOf(places);
    const sum = checksum(numbers);
    const found = this.kept.find(
      (one) => one.sum === sum && sameNumbers(one.numbers, numbers) && sameNumbers(one.coordinates, coordinates),
    );
    const { tree } = found ?? { tree: order() };
    const others = this.kept.filter((one) => one !== found);
    this.kept = [{ sum, numbers, coordinates, tree }, ...others].slice(0, KEPT);
    return tree;
  }
}

/** A graph and the places of its nodes as plain numbers: little for the collector to follow. */
type Kept = {
  readonly sum: number;
  readonly numbers: Int32Array;
  readonly coordinates: Float64Array;
  readonly tree: FrontTree;
};

/** Containers drawn in one scheme come up together, one set of assumptions after the other. */
const KEPT = 16;

/** Weights, retained nodes, then the size and the nodes of every clique. */
function numbersOf({ weights, retained, cliques }: NodeGraph): Int32Array {
  const numbers = new Int32Array(cliques.reduce((sum, clique) => sum + clique.length + 1, 2 * weights.length));
  numbers.set(weights);
  numbers.set(retained, weights.length);
  let at = 2 * weights.length;
  for (const clique of cliques) {
    numbers[at++] = clique.length;
    for (let n = 0; n < clique.length; n++) numbers[at++] = clique[n] ?? 0;
  }
  return numbers;
}

function coordinatesOf(places: readonly Vector[]): Float64Array {
  const coordinates = new Float64Array(3 * places.length);
  for (let n = 0; n < places.length; n++) for (let c = 0; c < 3; c++) coordinates[3 * n + c] = places[n]?.[c] ?? 0;
  return coordinates;
}

/** Tells most apart at a glance (FNV-1a over the numbers). */
function checksum(numbers: Int32Array): number {
  let sum = 0x811c9dc5;
  for (let n = 0; n < numbers.length; n++) sum = Math.imul(sum ^ (numbers[n] ?? 0), 0x01000193);
  return sum;
}
