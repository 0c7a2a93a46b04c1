import { describe, expect, it } from "vitest";
import fc from "fast-check";
import { Matrix, solve } from "ml-matrix";
import { product, reduceColumns, type BorderColumn } from "../../src/numerics/border.ts";
import { solveBordered } from "../../src/numerics/bordered-factor.ts";
import { eliminateDense } from "../../src/numerics/dense-ldlt.ts";
import { frontTree } from "../../src/numerics/front-tree.ts";
import { factorise } from "../../src/numerics/sparse-ldlt.ts";
import type { SparseElement } from "../../src/numerics/sparse-factor.ts";

/** Springs of random stiffness on a ring with chords, one unknown per node, all grounded a little; and columns around it. */
const bordered = fc
  .record({ nodes: fc.integer({ min: 3, max: 40 }), further: fc.integer({ min: 1, max: 6 }), seed: fc.nat() })
  .map(({ nodes, further, seed }) => {
    let state = (seed % 2147483646) + 1;
    const next = () => (state = (state * 48271) % 2147483647) / 2147483647;
    const pairs = Array.from({ length: 2 * nodes }, (_, e) => {
      const other = e < nodes ? (e + 1) % nodes : Math.floor(next() * nodes);
      return [e % nodes, other === e % nodes ? (other + 1) % nodes : other] as const;
    });
    const weights = new Int32Array(nodes).fill(1);
    const tree = frontTree({ weights, cliques: pairs.map((pair) => [...pair]), retained: new Uint8Array(nodes) });
    const elements = pairs.map(([a, b]): SparseElement => {
      const k = 1 + 100 * next();
      return {
        equations: Int32Array.of(tree.firstEquation[a] ?? -1, tree.firstEquation[b] ?? -1),
        matrix: Float64Array.of(k + 1, -k, -k, k + 1),
      };
    });
    const dense = Matrix.zeros(nodes, nodes);
    for (const {
      equations: [i = 0, j = 0],
      matrix: [a = 0, b = 0, c = 0, d = 0],
    } of elements) {
      dense.set(i, i, dense.get(i, i) + a);
      dense.set(i, j, dense.get(i, j) + b);
      dense.set(j, i, dense.get(j, i) + c);
      dense.set(j, j, dense.get(j, j) + d);
    }
    const columns = Array.from({ length: further }, (): BorderColumn => {
      const equations = [...new Set([Math.floor(next() * nodes), Math.floor(next() * nodes)])];
      return { equations, values: equations.map(() => next() - 0.5) };
    });
    const wide = Matrix.zeros(nodes, further);
    columns.forEach(({ equations, values }, c) => equations.forEach((e, n) => wide.set(e, c, values[n] ?? 0)));
    return { factor: factorise(tree, elements), dense, columns, wide, corner: columns.map(() => -0.1 - next()) };
  });

const settings = { seed: 20260301, numRuns: 150 };
const apart = (a: readonly number[], b: readonly number[]): number =>
  Math.max(...a.map((value, n) => Math.abs(value - (b[n] ?? NaN)))) / Math.max(...b.map(Math.abs), 1e-300);

describe("further unknowns around a factorised matrix", () => {
  it("have products wᵀ·K⁻¹·v as a dense solve gives them (ml-matrix), the same bits in either order and in any company", () => {
    fc.assert(
      fc.property(bordered, ({ factor, dense, columns, wide }) => {
        const reduced = reduceColumns(factor, columns);
        const expected = wide.transpose().mmul(solve(dense, wide));
        const alone = columns.map((column) => reduceColumns(factor, [column])[0]);
        expect(alone).toEqual(reduced);
        const ours = reduced.flatMap((w) => reduced.map((v) => product(w, v)));
        expect(apart(ours, expected.to1DArray())).toBeLessThan(1e-12);
        reduced.forEach((w) => reduced.forEach((v) => expect(product(w, v)).toBe(product(v, w))));
      }),
      settings,
    );
  });

  it("are solved for with the rest as a dense solve of the whole (ml-matrix), to 1e-10 of the largest unknown", () => {
    fc.assert(
      fc.property(bordered, ({ factor, dense, columns, wide, corner }) => {
        const [n, p] = [dense.rows, columns.length];
        const inverse = factor.diagonal.map((pivot) => 1 / pivot);
        const reduced = reduceColumns(factor, columns);
        const own = Float64Array.from({ length: p * p }, (_, at) => {
          const [i, j] = [Math.floor(at / p), at % p];
          const [w, v] = [reduced[i], reduced[j]];
          return (i === j ? (corner[i] ?? NaN) : 0) - (w && v ? product(w, v) : NaN);
        });
        expect(eliminateDense(own, p, p, new Float64Array(p).fill(1))).toBe(true);
        const whole = Matrix.zeros(n + p, n + p);
        whole.setSubMatrix(dense, 0, 0).setSubMatrix(wide, 0, n).setSubMatrix(wide.transpose(), n, 0);
        corner.forEach((value, c) => whole.set(n + c, n + c, value));
        const loads = Array.from({ length: n + p }, (_, i) => [(i % 7) - 3, i % 2, 1]);
        const x = Float64Array.from(loads.flat());
        solveBordered(factor, { columns: reduced, inverse, corner: own }, x, 3);
        expect(apart([...x], solve(whole, new Matrix(loads)).to1DArray())).toBeLessThan(1e-10);
        const first = Float64Array.from(loads, ([value = NaN]) => value);
        solveBordered(factor, { columns: reduced, inverse, corner: own }, first, 1);
        expect(first).toEqual(x.filter((_, at) => at % 3 === 0));
      }),
      settings,
    );
  });

  it("are given up when their own matrix nearly vanishes, as two equal columns make it", () => {
    const singular = Float64Array.of(2, -2, -2, 2 + 1e-12);
    expect(eliminateDense(singular, 2, 2, Float64Array.of(2, 2))).toBe(false);
    const sound = Float64Array.of(2, -1, -1, 2);
    expect(eliminateDense(sound, 2, 2, Float64Array.of(2, 2))).toBe(true);
  });
});
