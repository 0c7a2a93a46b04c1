import { describe, expect, it } from "vitest";
import { factorFigure } from "../../src/drawing/stroke/factor-figure.ts";
import { rulingPen } from "../../src/drawing/stroke/ruling-pen.ts";
import { strandPen } from "../../src/drawing/stroke/strand-pen.ts";

const pointsOf = (path: string): [number, number][] =>
  path
    .replaceAll(/[MZ]/g, "")
    .split("L")
    .map((pair) => pair.split(" ").map(Number) as [number, number]);

describe("a strand", () => {
  const way = Array.from({ length: 21 }, (_, n) => ({ xPx: n * 5, yPx: 0 }));

  it("is as wide as its force in the middle and tapers at both ends", () => {
    const points = pointsOf(strandPen(way, 6, "a"));
    const widthAt = (x: number) => {
      const ys = points.filter(([px]) => Math.abs(px - x) < 1).map(([, y]) => y);
      return Math.max(...ys) - Math.min(...ys);
    };
    // an edge wanders by 0.14 px at most
    expect(Math.abs(widthAt(50) - 6)).toBeLessThan(2 * 0.14 + 0.01);
    expect(widthAt(0)).toBeLessThan(2);
    expect(widthAt(100)).toBeLessThan(2);
  });

  it("is drawn alike on every redraw, and not where there is no way", () => {
    expect(strandPen(way, 6, "a")).toBe(strandPen(way, 6, "a"));
    expect(strandPen(way, 6, "a")).not.toBe(strandPen(way, 6, "b"));
    expect(strandPen(way.slice(0, 1), 6, "a")).toBe("");
  });
});

describe("a stroke that takes up load on its way", () => {
  it("is as wide there as what it carries there", () => {
    const run = { from: { xPx: 0, yPx: 0 }, to: { xPx: 0, yPx: 100 }, widthFromPx: 2, widthToPx: 20 };
    const at = (path: string, y: number) => {
      const xs = pointsOf(path).filter(([, py]) => Math.abs(py - y) < 2.5);
      return Math.max(...xs.map(([x]) => x)) - Math.min(...xs.map(([x]) => x));
    };
    const even = rulingPen(run, "a");
    const late = rulingPen({ ...run, onTheWay: [{ share: 0.9, widthPx: 4 }] }, "a");
    expect(Math.abs(at(even, 50) - 11)).toBeLessThan(0.5);
    expect(at(late, 50)).toBeLessThan(4);
    expect(Math.abs(at(late, 100) - 20)).toBeLessThan(0.5);
  });
});

describe("the factor of a deflected shape", () => {
  it.each([
    [83.4, "83 times larger"],
    [2.43, "2.4 times larger"],
    [1, "at its own size"],
    [0.4, "2.5 times smaller"],
  ])("%d is said as %s", (factor, words) => expect(factorFigure(factor)).toBe(words));
});
