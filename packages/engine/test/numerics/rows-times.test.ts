import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { addRowsTimesTwo } from "../../src/numerics/rows-times.ts";

const number = fc.double({ min: -1e6, max: 1e6, noNaN: true });
const numbers = (length: number) =>
  fc.array(number, { minLength: length, maxLength: length }).map((values) => Float64Array.from(values));
const problem = fc
  .tuple(fc.integer({ min: 1, max: 13 }), fc.integer({ min: 0, max: 9 }))
  .chain(([rows, columns]) => fc.tuple(numbers(rows * columns), numbers(columns), numbers(columns), numbers(rows)));

/** Row by row, one term after another. */
function plainly(matrix: Float64Array, vector: Float64Array, start: Float64Array): number[] {
  return Array.from(start, (sum, row) =>
    vector.reduce((all, value, c) => all + (matrix[row * vector.length + c] ?? NaN) * value, sum),
  );
}

describe("rows of a matrix times two vectors", () => {
  it("have the bits of each row summed by itself, whatever stands beside it", () => {
    fc.assert(
      fc.property(problem, ([matrix, a, b, start]) => {
        const [one, other] = [start.slice(), start.slice()];
        addRowsTimesTwo(matrix, a, b, one, other);
        expect([...one]).toEqual(plainly(matrix, a, start));
        expect([...other]).toEqual(plainly(matrix, b, start));
      }),
      { seed: 20261127, numRuns: 300 },
    );
  });
});
