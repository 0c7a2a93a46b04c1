import fc from "fast-check";
import { Matrix } from "ml-matrix";
import type { NodeGraph } from "../../src/numerics/elimination-order.ts";
import { frontTree, type FrontTree } from "../../src/numerics/front-tree.ts";
import type { SparseElement } from "../../src/numerics/sparse-factor.ts";

export interface Network {
  weights: Int32Array;
  cliques: number[][];
  matrices: Float64Array[];
  retained: Uint8Array;
}

/** A random connected network of elements on nodes with 1 to 3 unknowns, each element matrix BᵀB plus a part of the unit matrix. */
export const network = fc
  .record({
    nodes: fc.integer({ min: 2, max: 24 }),
    seed: fc.integer({ min: 1, max: 2 ** 30 }),
    kept: fc.integer({ min: 0, max: 4 }),
  })
  .map(({ nodes, seed, kept }): Network => {
    let state = seed;
    const next = () => (state = (state * 48271) % 2147483647) / 2147483647;
    const weights = Int32Array.from({ length: nodes }, () => 1 + Math.floor(next() * 3));
    const cliques = Array.from({ length: nodes * 2 }, (_, e) => {
      const others = [e % nodes, (e + 1) % nodes, Math.floor(next() * nodes)];
      return [...new Set(others)];
    });
    const matrices = cliques.map((clique) => {
      const size = clique.reduce((sum, node) => sum + (weights[node] ?? 0), 0);
      const b = Matrix.zeros(size, size).apply(function (this: Matrix, i, j) {
        this.set(i, j, next() - 0.5);
      });
      return Float64Array.from(
        b
          .transpose()
          .mmul(b)
          .add(Matrix.eye(size, size, 0.1))
          .to1DArray(),
      );
    });
    const retained = Uint8Array.from({ length: nodes }, (_, node) => (node < Math.min(kept, nodes - 1) ? 1 : 0));
    return { weights, cliques, matrices, retained };
  });

/** The network's elements on the equations of an order of work, and its matrix. */
export function build(
  { weights, cliques, matrices, retained }: Network,
  treeOf: (graph: NodeGraph) => FrontTree = frontTree,
) {
  const tree = treeOf({ weights, cliques, retained });
  const elements = cliques.map((clique, e): SparseElement => ({
    equations: Int32Array.from(
      clique.flatMap((node) =>
        Array.from({ length: weights[node] ?? 0 }, (_, k) => (tree.firstEquation[node] ?? 0) + k),
      ),
    ),
    matrix: matrices[e] ?? new Float64Array(),
  }));
  const dense = Matrix.zeros(tree.equations, tree.equations);
  for (const { equations, matrix } of elements) {
    equations.forEach((i, a) =>
      equations.forEach((j, b) => dense.set(i, j, dense.get(i, j) + (matrix[a * equations.length + b] ?? 0))),
    );
  }
  return { tree, elements, dense };
}
