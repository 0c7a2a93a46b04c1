import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { cloudPath } from "../../src/drawing/cloud/cloud-path.ts";
import { concreteStipple } from "../../src/drawing/ground/concrete-stipple.ts";
import { groundClumps } from "../../src/drawing/ground/ground-clumps.ts";

const arcs = (path: string) =>
  [...path.matchAll(/a([\d.]+) [\d.]+ 0 0 1 (-?[\d.]+) (-?[\d.]+)/g)].map(([, , dx, dy]) => ({
    dx: Number(dx),
    dy: Number(dy),
  }));

describe("a cloud", () => {
  const size = fc.integer({ min: 60, max: 700 });

  it("goes round its rectangle and comes back to where it began", () => {
    fc.assert(
      fc.property(size, size, (widthPx, heightPx) => {
        const chords = arcs(cloudPath({ xPx: 10, yPx: 20, widthPx, heightPx }));
        const sum = (of: "dx" | "dy") => chords.reduce((total, chord) => total + chord[of], 0);
        expect(Math.abs(sum("dx"))).toBeLessThan(0.5);
        expect(Math.abs(sum("dy"))).toBeLessThan(0.5);
        expect(chords.filter(({ dx }) => dx > 0).reduce((total, { dx }) => total + dx, 0)).toBeCloseTo(widthPx, 0);
      }),
      { seed: 9, numRuns: 100 },
    );
  });

  it("is made of arcs of about 20 px", () => {
    fc.assert(
      fc.property(size, size, (widthPx, heightPx) => {
        for (const { dx, dy } of arcs(cloudPath({ xPx: 0, yPx: 0, widthPx, heightPx }))) {
          expect(Math.hypot(dx, dy)).toBeGreaterThan(15);
          expect(Math.hypot(dx, dy)).toBeLessThan(26);
        }
      }),
      { seed: 10, numRuns: 100 },
    );
  });
});

describe("concrete and ground", () => {
  const rect = { xPx: 100, yPx: 500, widthPx: 35, heightPx: 21 };

  it("are drawn alike on every redraw, and differently for another pad", () => {
    expect(concreteStipple(rect, "b1")).toEqual(concreteStipple(rect, "b1"));
    expect(concreteStipple(rect, "b1")).not.toEqual(concreteStipple(rect, "b2"));
    expect(groundClumps(0, 400, 500)).toEqual(groundClumps(0, 400, 500));
  });

  it("keep every stone inside the pad and under the ground line", () => {
    for (const { xPx, yPx } of concreteStipple(rect, "b1").dots) {
      expect(xPx).toBeGreaterThan(100);
      expect(xPx).toBeLessThan(135);
      expect(yPx).toBeGreaterThan(500);
      expect(yPx).toBeLessThan(521);
    }
    for (const { yPx } of groundClumps(0, 400, 500).stones) expect(yPx).toBeGreaterThan(500);
  });
});
