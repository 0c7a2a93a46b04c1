import { describe, expect, it } from "vitest";
import type { NodeGraph } from "../../src/numerics/elimination-order.ts";
import { frontTreeOf, type FrontTree } from "../../src/numerics/front-tree.ts";
import { KnownTrees } from "../../src/numerics/known-trees.ts";
import { placeDissection } from "../../src/numerics/place-dissection.ts";
import type { Vector } from "../../src/numerics/vector.ts";

/** A chain of nodes 100 mm apart, six unknowns at each. */
const chain = (nodes: number): { graph: NodeGraph; places: Vector[] } => ({
  graph: {
    weights: new Int32Array(nodes).fill(6),
    cliques: Array.from({ length: nodes - 1 }, (_, n) => [n, n + 1]),
    retained: new Uint8Array(nodes),
  },
  places: Array.from({ length: nodes }, (_, n): Vector => [100 * n, 0, 0]),
});

const orderOf = (graph: NodeGraph, places: readonly Vector[]): FrontTree =>
  frontTreeOf(placeDissection(graph, places), graph);

describe("an order of work for a whole part", () => {
  it("is the one known where graph and places are the same, and is not asked for again", () => {
    const known = new KnownTrees();
    const { graph, places } = chain(60);
    const first = known.take(graph, places, () => orderOf(graph, places));
    const again = chain(60);
    const asked = (): FrontTree => {
      throw new Error("it is known");
    };
    expect(known.take(again.graph, again.places, asked)).toBe(first);
  });

  it("is made anew where a node has other unknowns, is kept, is joined otherwise or stands elsewhere", () => {
    const { graph, places } = chain(60);
    const others = [
      { graph: { ...graph, weights: graph.weights.with(7, 3) }, places },
      { graph: { ...graph, retained: graph.retained.with(7, 1) }, places },
      { graph: { ...graph, cliques: graph.cliques.map((clique, n) => (n === 7 ? [7, 9] : clique)) }, places },
      { graph: { ...graph, cliques: [...graph.cliques, [3, 30]] }, places },
      { graph, places: places.with(7, [5000, 0, 0]) },
    ];
    const known = new KnownTrees();
    known.take(graph, places, () => orderOf(graph, places));
    for (const other of others) {
      const made = orderOf(other.graph, other.places);
      expect(known.take(other.graph, other.places, () => made)).toBe(made);
    }
  });
});
