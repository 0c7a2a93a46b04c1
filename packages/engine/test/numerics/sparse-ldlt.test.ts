import { describe, expect, it } from "vitest";
import fc from "fast-check";
import { Matrix, solve } from "ml-matrix";
import { FactorMemory } from "../../src/numerics/factor-memory.ts";
import { factorise } from "../../src/numerics/sparse-ldlt.ts";
import { recoverInner, reduceLoads, solveInPlace } from "../../src/numerics/sparse-solve.ts";
import { build, network } from "./random-network.ts";

const settings = { seed: 20260101, numRuns: 150 };

describe("sparse LDLᵀ", () => {
  it("solves random networks as a dense LU does (ml-matrix), to 1e-10 of the largest unknown", () => {
    fc.assert(
      fc.property(network, (net) => {
        const whole = { ...net, retained: new Uint8Array(net.weights.length) };
        const { tree, elements, dense } = build(whole);
        const loads = Array.from({ length: tree.equations }, (_, i) => [Math.sin(i + 1), i % 3]);
        const x = Float64Array.from(loads.flat());
        solveInPlace(factorise(tree, elements), x, 2);
        const expected = solve(dense, new Matrix(loads)).to1DArray();
        const largest = Math.max(...expected.map(Math.abs));
        expect(Math.max(...expected.map((value, i) => Math.abs(value - (x[i] ?? NaN))))).toBeLessThan(1e-10 * largest);
      }),
      settings,
    );
  });

  it("leaves on retained unknowns the Schur complement that dense block elimination leaves (ml-matrix)", () => {
    fc.assert(
      fc.property(network, (net) => {
        const { tree, elements, dense } = build(net);
        const inner = Array.from({ length: tree.eliminated }, (_, i) => i);
        const kept = Array.from({ length: tree.equations - tree.eliminated }, (_, i) => tree.eliminated + i);
        fc.pre(kept.length > 0 && inner.length > 0);
        const kii = dense.selection(inner, inner);
        const kib = dense.selection(inner, kept);
        const expected = dense
          .selection(kept, kept)
          .sub(kib.transpose().mmul(solve(kii, kib)))
          .to1DArray();
        const { schur } = factorise(tree, elements);
        const largest = Math.max(...expected.map(Math.abs));
        expect(Math.max(...expected.map((value, i) => Math.abs(value - (schur[i] ?? NaN))))).toBeLessThan(
          1e-11 * largest,
        );
      }),
      settings,
    );
  });

  it("reduced loads, a dense solve on the retained unknowns and recovery give the solution of the whole", () => {
    fc.assert(
      fc.property(network, (net) => {
        const { tree, elements, dense } = build(net);
        const kept = tree.equations - tree.eliminated;
        fc.pre(kept > 0);
        const load = Array.from({ length: tree.equations }, (_, i) => Math.cos(3 * i));
        const factor = factorise(tree, elements);
        const x = Float64Array.from(load);
        reduceLoads(factor, x, 1);
        const schur = new Matrix(kept, kept).apply(function (this: Matrix, i, j) {
          this.set(i, j, factor.schur[i * kept + j] ?? NaN);
        });
        solve(schur, Matrix.columnVector([...x.subarray(tree.eliminated)]))
          .to1DArray()
          .forEach((value, i) => (x[tree.eliminated + i] = value));
        recoverInner(factor, x, 1);
        const expected = solve(dense, Matrix.columnVector(load)).to1DArray();
        const largest = Math.max(...expected.map(Math.abs));
        expect(Math.max(...expected.map((value, i) => Math.abs(value - (x[i] ?? NaN))))).toBeLessThan(1e-10 * largest);
      }),
      settings,
    );
  });

  it("gives the same bits when the same network is factorised twice", () => {
    const [net] = fc.sample(network, { seed: 7, numRuns: 1 });
    if (net === undefined) throw new Error("no network drawn");
    const first = build(net);
    const second = build(net);
    expect(factorise(second.tree, second.elements).panels).toEqual(factorise(first.tree, first.elements).panels);
  });

  it("worked on from memory after one element has changed, has the same bits as worked from nothing", () => {
    fc.assert(
      fc.property(network, fc.nat(), (net, pick) => {
        const before = build({ ...net, retained: new Uint8Array(net.weights.length) });
        const changed = pick % before.elements.length;
        const after = before.elements.map((element, n) =>
          n === changed ? { ...element, matrix: element.matrix.map((value) => value * 1.5) } : element,
        );
        const memory = new FactorMemory();
        const first = memory.factorise(before.tree, before.elements, new Set());
        const again = memory.factorise(before.tree, after, new Set());
        const fresh = factorise(before.tree, after);
        expect(again.panels).toEqual(fresh.panels);
        expect(again.diagonal).toEqual(fresh.diagonal);
        expect(memory.factorise(before.tree, before.elements, new Set()).panels).toEqual(first.panels);
      }),
      settings,
    );
  });

  it("names the equation of a floating chain as loose instead of dividing by its vanished pivot", () => {
    const weights = Int32Array.of(1, 1, 1);
    const cliques = [
      [0, 1],
      [1, 2],
    ];
    const spring = Float64Array.of(1000, -1000, -1000, 1000);
    const { tree, elements } = build({ weights, cliques, matrices: [spring, spring], retained: new Uint8Array(3) });
    expect(factorise(tree, elements).loose).toHaveLength(1);
  });
});
