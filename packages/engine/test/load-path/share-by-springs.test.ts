import fc from "fast-check";
import { Matrix, pseudoInverse } from "ml-matrix";
import { describe, expect, it } from "vitest";
import { outsideHull } from "../../src/load-path/outside-hull.ts";
import { shareBySprings } from "../../src/load-path/share-by-springs.ts";

type At = { xMm: number; yMm: number };
const bare = (places: readonly At[]) => places.map((place) => ({ ...place, directKn: 0 }));

/** Equal springs give the forces of least sum of squares in equilibrium: the pseudo-inverse of the equilibrium matrix. */
function leastSquares(places: readonly At[], forceKn: number, at: At): number[] {
  const m = (mm: number) => mm / 1000;
  const equilibrium = new Matrix([
    places.map(() => 1),
    places.map(({ xMm }) => m(xMm)),
    places.map(({ yMm }) => m(yMm)),
  ]);
  const load = Matrix.columnVector([forceKn, forceKn * m(at.xMm), forceKn * m(at.yMm)]);
  return pseudoInverse(equilibrium).mmul(load).to1DArray();
}

const place = fc.record({ xMm: fc.integer({ min: -6000, max: 6000 }), yMm: fc.integer({ min: -1200, max: 1200 }) });

describe("shareBySprings", () => {
  it("gives four corners a quarter each of a load in the middle", () => {
    const corners = [-1, 1].flatMap((x) => [-1, 1].map((y) => ({ xMm: x * 5992.5, yMm: y * 1129.5 })));
    for (const share of shareBySprings(bare(corners), { forceKn: 39.24, xMm: 0, yMm: 0 }))
      expect(share).toBeCloseTo(9.81, 12);
  });

  it("is plain statics on three bearings: 10 kN at the middle of one side, none on the third", () => {
    const shares = shareBySprings(
      bare([
        { xMm: 0, yMm: 0 },
        { xMm: 4000, yMm: 0 },
        { xMm: 0, yMm: 2000 },
      ]),
      { forceKn: 10, xMm: 1000, yMm: 0 },
    );
    // Moments about y = 0: third = 0; about x = 0: second = 10 × 1000/4000 = 2.5.
    expect(shares[0]).toBeCloseTo(7.5, 12);
    expect(shares[1]).toBeCloseTo(2.5, 12);
    expect(shares[2]).toBeCloseTo(0, 12);
  });

  it("is the lever rule on two: 3 m and 1 m from the load, a quarter and three quarters", () => {
    const shares = shareBySprings(
      bare([
        { xMm: 0, yMm: 0 },
        { xMm: 4000, yMm: 0 },
      ]),
      { forceKn: 8, xMm: 3000, yMm: 0 },
    );
    expect(shares[0]).toBeCloseTo(2, 12);
    expect(shares[1]).toBeCloseTo(6, 12);
  });

  it("agrees with the pseudo-inverse of a matrix library wherever no bearing would pull", () => {
    let compared = 0;
    fc.assert(
      fc.property(fc.uniqueArray(place, { minLength: 3, maxLength: 8 }), (places) => {
        const at = {
          xMm: places.reduce((s, p) => s + p.xMm, 0) / places.length + 50,
          yMm: places.reduce((s, p) => s + p.yMm, 0) / places.length,
        };
        if (!outsideHull(places, at).spansArea) return;
        const expected = leastSquares(places, 100, at);
        if (expected.some((share) => share < 0.01)) return;
        compared += 1;
        shareBySprings(bare(places), { forceKn: 100, ...at }).forEach((share, index) =>
          expect(share).toBeCloseTo(expected[index] ?? NaN, 6),
        );
      }),
      { seed: 3, numRuns: 400 },
    );
    expect(compared).toBeGreaterThan(200);
  });

  it("where some would pull, lets them go and stays in equilibrium, pressing only", () => {
    let lifted = 0;
    const mix = fc.array(fc.double({ min: 0.01, max: 1, noNaN: true }), { minLength: 8, maxLength: 8 });
    fc.assert(
      fc.property(fc.uniqueArray(place, { minLength: 4, maxLength: 8 }), mix, (places, weights) => {
        const used = places.map((_, index) => (weights[index] ?? 1) ** 6);
        const sum = used.reduce((a, b) => a + b, 0);
        const mean = (of: (p: At) => number) => places.reduce((s, p, index) => s + of(p) * (used[index] ?? 0), 0) / sum;
        const at = { xMm: mean((p) => p.xMm), yMm: mean((p) => p.yMm) };
        const { spansArea, outsideMm } = outsideHull(places, at);
        if (!spansArea || outsideMm > 0) return;
        if (leastSquares(places, 100, at).some((share) => share < -1)) lifted += 1;
        const shares = shareBySprings(bare(places), { forceKn: 100, ...at });
        for (const share of shares) expect(share).toBeGreaterThanOrEqual(-1e-6);
        const moment = (of: (p: At) => number) =>
          shares.reduce((s, share, index) => s + share * of(places[index] ?? at), 0);
        expect(moment(() => 1)).toBeCloseTo(100, 6);
        expect(moment((p) => p.xMm) / 100).toBeCloseTo(at.xMm, 3);
        expect(moment((p) => p.yMm) / 100).toBeCloseTo(at.yMm, 3);
      }),
      { seed: 4, numRuns: 400 },
    );
    expect(lifted).toBeGreaterThan(50);
  });

  it("takes from a bearing no more than what comes down on it directly", () => {
    // Two bearings 4 m apart, the load 1 m beyond the second: statics wants −2 kN of the first, which carries 3 directly.
    const shares = shareBySprings(
      [
        { xMm: 0, yMm: 0, directKn: 3 },
        { xMm: 4000, yMm: 0, directKn: 0 },
      ],
      { forceKn: 8, xMm: 5000, yMm: 0 },
    );
    expect(shares[0]).toBeCloseTo(-2, 12);
    expect(shares[1]).toBeCloseTo(10, 12);
  });
});

describe("outsideHull", () => {
  const square = [-1, 1].flatMap((x) => [-1, 1].map((y) => ({ xMm: x * 1000, yMm: y * 1000 })));

  it("finds a point inside, on the edge, beside an edge and beyond a corner", () => {
    expect(outsideHull(square, { xMm: 0, yMm: 0 })).toMatchObject({ outsideMm: 0, spansArea: true });
    expect(outsideHull(square, { xMm: 1000, yMm: 0 }).outsideMm).toBe(0);
    expect(outsideHull(square, { xMm: 1200, yMm: 500 })).toMatchObject({
      outsideMm: 200,
      nearest: { xMm: 1000, yMm: 500 },
    });
    // 3-4-5: 300 and 400 beyond the corner.
    expect(outsideHull(square, { xMm: 1300, yMm: 1400 }).outsideMm).toBeCloseTo(500, 9);
  });

  it("knows bearings on one line from bearings that span an area", () => {
    const line = [0, 2000, 5000].map((xMm) => ({ xMm, yMm: 0 }));
    expect(outsideHull(line, { xMm: 2500, yMm: 30 })).toMatchObject({ outsideMm: 30, spansArea: false });
    expect(outsideHull(line.slice(0, 1), { xMm: 0, yMm: 7 })).toMatchObject({ outsideMm: 7, spansArea: false });
  });
});
