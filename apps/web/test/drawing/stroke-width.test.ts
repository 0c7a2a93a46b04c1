import { describe, expect, it } from "vitest";
import { rulingPen } from "../../src/drawing/stroke/ruling-pen.ts";
import { strokeWidthPx, widestForceKn } from "../../src/drawing/stroke/stroke-width.ts";

// The office's rule for load strokes: width px = 0.122 × kN × (px a metre) / 50, at least 1.1, at most 24.
describe("the width of a load stroke", () => {
  it.each([
    [25, 50, 3.05],
    [50, 50, 6.1],
    [100, 50, 12.2],
    [100, 25, 6.1],
    [66, 40, 0.122 * 66 * 0.8],
  ])("%d kN at %d px a metre is %d px", (forceKn, pxPerM, widthPx) => {
    expect(strokeWidthPx(forceKn, pxPerM)).toBeCloseTo(widthPx, 9);
  });

  it("is never less than 1.1 px nor more than 24 px", () => {
    expect(strokeWidthPx(0, 50)).toBe(1.1);
    expect(strokeWidthPx(9, 50)).toBe(1.1);
    expect(strokeWidthPx(200, 50)).toBe(24);
    expect(strokeWidthPx(5000, 50)).toBe(24);
  });

  it("stops at 24 px ÷ 0.122 = 196.7 kN where a metre is 50 px, and at twice that where it is 25", () => {
    expect(widestForceKn(50)).toBeCloseTo(196.72, 2);
    expect(widestForceKn(25)).toBeCloseTo(393.44, 2);
  });
});

describe("a stroke of the ruling pen", () => {
  const run = { from: { xPx: 100, yPx: 0 }, to: { xPx: 100, yPx: 50 }, widthFromPx: 6, widthToPx: 10 };
  const edges = (path: string) =>
    [...path.matchAll(/(-?[\d.]+) (-?[\d.]+)/g)].map(([, x, y]) => ({ x: Number(x), y: Number(y) }));

  it("is the same on every redraw and differs from member to member", () => {
    expect(rulingPen(run, "g1-post")).toBe(rulingPen(run, "g1-post"));
    expect(rulingPen(run, "g1-post")).not.toBe(rulingPen(run, "g2-post"));
  });

  it("keeps each edge within 0.22 px of half its width, widening evenly from head to foot", () => {
    for (const { x, y } of edges(rulingPen(run, "any"))) {
      const half = (6 + (4 * y) / 50) / 2;
      expect(Math.abs(Math.abs(x - 100) - half)).toBeLessThanOrEqual(0.22 + 0.01);
    }
  });

  it("samples its centre line every 5 px: 11 points a side over 50 px", () => {
    expect(edges(rulingPen(run, "any"))).toHaveLength(22);
  });
});
