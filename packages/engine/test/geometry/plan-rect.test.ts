import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { planFrame } from "../../src/geometry/place.ts";
import { planGrid } from "../../src/geometry/plan-grid.ts";
import {
  clipLine,
  holdsPoint,
  overlapDepthMm,
  planBounds,
  planRect,
  type PlanRect,
} from "../../src/geometry/plan-rect.ts";

const rect = (xMm: number, yMm: number, turnDegrees: number, length: number, width: number): PlanRect =>
  planRect(planFrame(xMm * 1000, yMm * 1000, 0, turnDegrees * 1000), -length / 2, length / 2, -width / 2, width / 2);

const anyRect = fc
  .record({
    x: fc.integer({ min: -5000, max: 5000 }),
    y: fc.integer({ min: -5000, max: 5000 }),
    turn: fc.integer({ min: 0, max: 359 }),
    length: fc.integer({ min: 50, max: 12192 }),
    width: fc.integer({ min: 50, max: 2438 }),
  })
  .map(({ x, y, turn, length, width }) => rect(x, y, turn, length, width));

/** Whether any of a lattice of points of one rectangle lies well inside the other: a check without separating axes. */
const sharesPoint = (one: PlanRect, other: PlanRect, steps = 40): boolean => {
  for (let i = 0; i <= steps; i += 1)
    for (let j = 0; j <= steps; j += 1) {
      const u = (2 * i) / steps - 1;
      const v = (2 * j) / steps - 1;
      const x = one.cxMm + u * one.halfUMm * one.ux - v * one.halfVMm * one.uy;
      const y = one.cyMm + u * one.halfUMm * one.uy + v * one.halfVMm * one.ux;
      if (holdsPoint(other, x, y, -0.001)) return true;
    }
  return false;
};

describe("overlapDepthMm", () => {
  it("is the push that parts two units side by side: 2438 wide, 2400 apart, 38 mm", () => {
    expect(overlapDepthMm(rect(0, 0, 0, 12192, 2438), rect(0, 2400, 0, 12192, 2438))).toBeCloseTo(38, 9);
  });

  it("is zero for units that touch", () => {
    expect(overlapDepthMm(rect(0, 0, 0, 12192, 2438), rect(0, 2438, 180, 12192, 2438))).toBeCloseTo(0, 9);
  });

  it("finds squares at 45° apart although their upright boxes meet", () => {
    // Corner to corner along the diagonal: half diagonals 707.1 each, centres 1500 apart on the diagonal of both.
    expect(overlapDepthMm(rect(0, 0, 45, 1000, 1000), rect(1060, 1060, 45, 1000, 1000))).toBeCloseTo(
      1000 - Math.hypot(1060, 1060),
      6,
    );
  });

  it("is positive whenever the two share a point found by sampling, and the same both ways round", () => {
    fc.assert(
      fc.property(anyRect, anyRect, (one, other) => {
        const depth = overlapDepthMm(one, other);
        expect(overlapDepthMm(other, one)).toBeCloseTo(depth, 6);
        if (sharesPoint(one, other) || sharesPoint(other, one)) expect(depth).toBeGreaterThan(0);
      }),
      { seed: 7, numRuns: 300 },
    );
  });

  it("is the length of a push along some side after which they only touch", () => {
    fc.assert(
      fc.property(anyRect, anyRect, (one, other) => {
        const depth = overlapDepthMm(one, other);
        if (depth <= 1) return;
        const ways = [one, other].flatMap(({ ux, uy }) => [
          [ux, uy],
          [-ux, -uy],
          [-uy, ux],
          [uy, -ux],
        ]);
        const parted = ways.some(([nx = 0, ny = 0]) => {
          const pushed = { ...other, cxMm: other.cxMm + nx * (depth + 0.01), cyMm: other.cyMm + ny * (depth + 0.01) };
          return !sharesPoint(one, pushed) && !sharesPoint(pushed, one);
        });
        expect(parted).toBe(true);
      }),
      { seed: 8, numRuns: 60 },
    );
  });
});

describe("clipLine", () => {
  it("gives the stretch of a rail over a strip: 60 mm of a line 1000 mm long from 470 to 530", () => {
    const cut = clipLine(rect(0, 0, 90, 5000, 60), -500, 0, 500, 0);
    expect(cut?.from).toBeCloseTo(0.47, 12);
    expect(cut?.to).toBeCloseTo(0.53, 12);
  });

  it("finds nothing where the line passes by", () => {
    expect(clipLine(rect(0, 0, 0, 1000, 60), -500, 31, 500, 31)).toBeUndefined();
    expect(clipLine(rect(0, 0, 0, 1000, 60), 501, -100, 900, 100)).toBeUndefined();
  });
});

describe("planGrid", () => {
  it("finds exactly what looking at every rectangle finds", () => {
    fc.assert(
      fc.property(fc.array(anyRect, { maxLength: 30 }), anyRect, (rects, at) => {
        const box = planBounds(at);
        const plain = rects.flatMap((other, index) => {
          const { x0, y0, x1, y1 } = planBounds(other);
          return x0 <= box.x1 && box.x0 <= x1 && y0 <= box.y1 && box.y0 <= y1 ? [index] : [];
        });
        expect(planGrid(rects).near(at, 0)).toEqual(plain);
      }),
      { seed: 9, numRuns: 200 },
    );
  });

  it("finds a slab larger than any cell from anywhere above it", () => {
    expect(planGrid([rect(0, 0, 0, 9_000_000, 9_000_000)]).near(rect(4_000_000, -4_000_000, 0, 10, 10), 0)).toEqual([
      0,
    ]);
  });
});
