import { describe, expect, it } from "vitest";
import fc from "fast-check";
import { Matrix, solve } from "ml-matrix";
import { frontTreeOf } from "../../src/numerics/front-tree.ts";
import type { NodeGraph } from "../../src/numerics/elimination-order.ts";
import { placeDissection } from "../../src/numerics/place-dissection.ts";
import { factorise } from "../../src/numerics/sparse-ldlt.ts";
import { solveInPlace } from "../../src/numerics/sparse-solve.ts";
import type { Vector } from "../../src/numerics/vector.ts";
import { build, network } from "./random-network.ts";

/** A ladder of so many rungs 100 mm apart, six unknowns at each of its two nodes. */
function ladder(rungs: number, extra: readonly (readonly number[])[] = []) {
  const nodes = Array.from({ length: 2 * rungs }, (_, n) => n);
  const graph: NodeGraph = {
    weights: new Int32Array(nodes.length).fill(6),
    cliques: [
      ...nodes.slice(2).map((n) => [n - 2, n]),
      ...nodes.filter((n) => n % 2 === 0).map((n) => [n, n + 1]),
      ...extra,
    ],
    retained: new Uint8Array(nodes.length),
  };
  const places = nodes.map((n): Vector => [Math.floor(n / 2) * 100, (n % 2) * 2000, 0]);
  return { graph, places };
}

describe("the order of work by place", () => {
  it("solves random networks on random places as a dense LU does (ml-matrix), to 1e-10 of the largest unknown", () => {
    fc.assert(
      fc.property(
        network,
        fc.array(fc.double({ min: 0, max: 9e4, noNaN: true }), { minLength: 24, maxLength: 24 }),
        (net, x) => {
          const whole = { ...net, retained: new Uint8Array(net.weights.length) };
          const places = x.map((along): Vector => [along, 0, 0]);
          const { tree, elements, dense } = build(whole, (graph) => frontTreeOf(placeDissection(graph, places), graph));
          const load = Array.from({ length: tree.equations }, (_, i) => Math.sin(i + 1));
          const ours = Float64Array.from(load);
          solveInPlace(factorise(tree, elements), ours, 1);
          const expected = solve(dense, Matrix.columnVector(load)).to1DArray();
          const largest = Math.max(...expected.map(Math.abs));
          expect(Math.max(...expected.map((value, i) => Math.abs(value - (ours[i] ?? NaN))))).toBeLessThan(
            1e-10 * largest,
          );
        },
      ),
      { seed: 20260101, numRuns: 100 },
    );
  });

  it("takes every node out once, and none that is retained", () => {
    const { graph, places } = ladder(100);
    graph.retained[7] = 1;
    const taken = placeDissection(graph, places).flatMap(({ pivots }) => pivots);
    expect(taken.toSorted((a, b) => a - b)).toEqual(Array.from(places.keys()).filter((node) => node !== 7));
  });

  it("keeps its steps away from a node that is joined otherwise", () => {
    const [before, after] = [ladder(100), ladder(100, [[190, 197]])].map(({ graph, places }) =>
      placeDissection(graph, places).map(({ pivots, boundary }) => `${pivots.join(" ")} | ${boundary.join(" ")}`),
    );
    const kept = before?.filter((step) => after?.includes(step)).length ?? 0;
    expect(kept).toBeGreaterThan(0.8 * (before?.length ?? NaN));
  });

  it("leaves a ladder's fronts no wider than two cuts and a stretch", () => {
    const { graph, places } = ladder(400);
    const { fronts } = frontTreeOf(placeDissection(graph, places), graph);
    const widest = Math.max(...fronts.map(({ rows }) => rows.length));
    // hand count: a cut across the ladder is 2 nodes of 6; a front between two cuts holds those and its own
    expect(widest).toBeLessThanOrEqual(6 * 2 * 6);
  });
});
