import { describe, expect, it } from "vitest";
import type { ChartAnswer } from "../../src/chart/chart.ts";
import { KnownLifts } from "../../src/chart/known-lifts.ts";

// A simple beam held at its ends bends most in the middle under its own weight (M = q·x·(l − x)/2): a cut further out, and no
// wider, is asked less. Sides of 12 m.

const MIDDLE_MM = 6000;
const within = (use: number): ChartAnswer => ({
  verdict: "works with steel",
  why: { kind: "within", partId: "rail, lifted", use, run: "lift" },
});
const place = (centreMm: number, widthMm: number) => ({ centreMm, widthMm });

describe("a lift that is far within its strength", () => {
  const lifts = new KnownLifts(MIDDLE_MM, true);
  lifts.note(true, place(5000, 1200), within(0.5));

  it("stands for openings no wider and no nearer the middle, on either side of it", () => {
    expect(lifts.isFar(true, place(4000, 1200))).toBe(true);
    expect(lifts.isFar(true, place(7500, 900))).toBe(true);
  });

  it("says nothing of wider ones, of those nearer the middle, or of bare edges", () => {
    expect(lifts.isFar(true, place(4000, 1250))).toBe(false);
    expect(lifts.isFar(true, place(5500, 900))).toBe(false);
    expect(lifts.isFar(false, place(4000, 900))).toBe(false);
  });

  it("says nothing where it was near its strength, or the wall is not plain", () => {
    const near = new KnownLifts(MIDDLE_MM, true);
    near.note(true, place(5000, 1200), within(0.9));
    expect(near.isFar(true, place(4000, 900))).toBe(false);
    const cut = new KnownLifts(MIDDLE_MM, false);
    cut.note(true, place(5000, 1200), within(0.5));
    expect(cut.isFar(true, place(4000, 900))).toBe(false);
  });
});
