import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { addRowsTimes, VECTORS_AT_ONCE } from "../../src/numerics/rows-times.ts";

const number = fc.double({ min: -1e6, max: 1e6, noNaN: true });
const numbers = (length: number) =>
  fc.array(number, { minLength: length, maxLength: length }).map((values) => Float64Array.from(values));
const problem = fc
  .tuple(fc.integer({ min: 1, max: 13 }), fc.integer({ min: 0, max: 9 }))
  .chain(([rows, columns]) =>
    fc.tuple(
      numbers(rows * columns),
      fc.tuple(numbers(columns), numbers(columns), numbers(columns), numbers(columns)),
      numbers(rows),
    ),
  );

/** Row by row, one term after another. */
function plainly(matrix: Float64Array, vector: Float64Array, start: Float64Array): number[] {
  return Array.from(start, (sum, row) =>
    vector.reduce((all, value, c) => all + (matrix[row * vector.length + c] ?? NaN) * value, sum),
  );
}

describe("rows of a matrix times four vectors", () => {
  it("have the bits of each row summed by itself, whatever stands beside it", () => {
    fc.assert(
      fc.property(problem, ([matrix, vectors, start]) => {
        const sideBySide = new Float64Array(vectors[0].length * VECTORS_AT_ONCE);
        vectors.forEach((vector, v) => vector.forEach((value, n) => (sideBySide[n * VECTORS_AT_ONCE + v] = value)));
        const sums = [start.slice(), start.slice(), start.slice(), start.slice()] as const;
        addRowsTimes(matrix, sideBySide, sums);
        expect(sums.map((sum) => [...sum])).toEqual(vectors.map((vector) => plainly(matrix, vector, start)));
      }),
      { seed: 20261127, numRuns: 300 },
    );
  });
});
