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
    const found = this.kept.find(
      (one) => sameNumbers(one.numbers, numbers) && sameNumbers(one.coordinates, coordinates),
    );
    const { tree } = found ?? { tree: order() };
    const others = this.kept.filter((one) => one !== found);
    this.kept = [{ numbers, coordinates, tree }, ...others].slice(0, KEPT);
    return tree;
  }
}

/** A graph and the places of its nodes as plain numbers: little for the collector to follow. */
type Kept = { readonly numbers: Int32Array; readonly coordinates: Float64Array; readonly tree: FrontTree };

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
  places.forEach(([x, y, z], n) => {
    coordinates[3 * n] = x;
    coordinates[3 * n + 1] = y;
    coordinates[3 * n + 2] = z;
  });
  return coordinates;
}
