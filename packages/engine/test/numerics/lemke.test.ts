import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { Matrix } from "ml-matrix";
import { lemke } from "../../src/numerics/lemke.ts";

/** M = BᵀB with fewer rows than columns now and then, so that it is only semidefinite; q of small whole numbers for ties. */
const problems = fc
  .record({
    n: fc.integer({ min: 1, max: 7 }),
    rank: fc.integer({ min: 1, max: 7 }),
    entries: fc.array(fc.integer({ min: -3, max: 3 }), { minLength: 49, maxLength: 49 }),
    q: fc.array(fc.integer({ min: -4, max: 4 }), { minLength: 7, maxLength: 7 }),
  })
  .map(({ n, rank, entries, q }) => {
    const b = new Matrix(Math.min(rank, n), n).apply(function (this: Matrix, i, j) {
      this.set(i, j, entries[i * 7 + j] ?? 0);
    });
    return { n, M: b.transpose().mmul(b), q: q.slice(0, n) };
  });

function run({ n, M, q }: { n: number; M: Matrix; q: number[] }) {
  const scale = Float64Array.from({ length: n }, (_, i) => Math.max(M.get(i, i), 1));
  return lemke(Float64Array.from(M.to1DArray()), Float64Array.from(q), scale, 1e-12);
}

const settings = { seed: 20260104, numRuns: 1500 };

describe("the complementarity solver", () => {
  it("where it finds a solution, z ≥ 0, M·z + q ≥ 0 and z·(M·z + q) = 0", () => {
    fc.assert(
      fc.property(problems, (problem) => {
        const result = run(problem);
        if (!result.solved) return;
        const w = problem.M.mmul(Matrix.columnVector([...result.z]))
          .to1DArray()
          .map((v, i) => v + (problem.q[i] ?? 0));
        w.forEach((value, i) => {
          expect(result.z[i]).toBeGreaterThanOrEqual(0);
          expect(value).toBeGreaterThan(-1e-9);
          expect(Math.abs(value * (result.z[i] ?? 0))).toBeLessThan(1e-8);
        });
      }),
      settings,
    );
  });

  it("where it finds none, its direction d ≥ 0 proves it: M·d = 0 and q·d < 0 (theorem of alternatives)", () => {
    let refused = 0;
    fc.assert(
      fc.property(problems, (problem) => {
        const result = run(problem);
        if (result.solved) return;
        refused++;
        const d = [...result.direction];
        const size = Math.max(...d);
        problem.M.mmul(Matrix.columnVector(d))
          .to1DArray()
          .forEach((value) => expect(Math.abs(value)).toBeLessThan(1e-9 * size));
        expect(d.reduce((sum, value, i) => sum + value * (problem.q[i] ?? 0), 0)).toBeLessThan(0);
      }),
      settings,
    );
    expect(refused).toBeGreaterThan(20);
  });
});
