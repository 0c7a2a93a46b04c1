import { describe, expect, it } from "vitest";
import type { BeamSupport } from "../../src/bearing/beam-supports.ts";
import { beamStatics } from "../../src/load-path/beam-statics.ts";

const supportsAt = (...places: number[]): BeamSupport[] =>
  places.map((uMm, at) => ({ uMm, target: { on: "pad", elementId: `b${at}` }, gapMm: 0, how: "on" }));

const loads = (...pairs: [uMm: number, forceKn: number][]) => pairs.map(([uMm, forceKn]) => ({ uMm, forceKn }));

describe("beamStatics", () => {
  it("shares a load between two supports by the lever: 12 kN at a third of 6 m gives 8 and 4 kN and 12 × 2 × 4/6 = 16 kN m", () => {
    const statics = beamStatics(supportsAt(0, 6000), loads([2000, 12]));
    expect(statics.reactionsKn).toEqual([8, 4]);
    expect(statics.momentKnm).toBeCloseTo(16, 9);
    expect(statics).toMatchObject({ upliftKn: 0, tips: false, longestSpanMm: 6000 });
  });

  it("hogs over a support that a load hangs past: 10 kN 2 m out with 20 kN in mid-span of 6 m gives −20 kN m and 30 − 20/2 = 20", () => {
    // South: 20/2 − 10 × 2/6 = 6.667; north: 20/2 + 10 × 8/6 = 23.333. Mid-span: 6.667 × 3 = 20 kN m.
    const statics = beamStatics(supportsAt(0, 6000), loads([3000, 20], [8000, 10]));
    expect(statics.reactionsKn[0]).toBeCloseTo(6.6667, 4);
    expect(statics.reactionsKn[1]).toBeCloseTo(23.3333, 4);
    expect(statics.momentKnm).toBeCloseTo(20, 9);
    expect(statics.upliftKn).toBe(0);
  });

  it("turns over its last support when nothing balances what hangs past it: 10 kN × 2/6 = 3.333 kN to hold, all on that support", () => {
    const statics = beamStatics(supportsAt(0, 6000), loads([8000, 10]));
    expect(statics.upliftKn).toBeCloseTo(3.3333, 4);
    expect(statics.tips).toBe(true);
    expect(statics.reactionsKn).toEqual([0, 10]);
  });

  it("lifts off a middle support and stands on the other two: 12 kN at 1 m and 10 kN at 10 m on 0, 4 and 8 m", () => {
    // Middle: 12 × 1/4 − 10 × 2/4 = −2. Without it: 12 × 7/8 − 10 × 2/8 = 8 and 12/8 + 10 × 10/8 = 14 kN.
    const statics = beamStatics(supportsAt(0, 4000, 8000), loads([1000, 12], [10000, 10]));
    expect(statics.upliftKn).toBeCloseTo(2, 9);
    expect(statics.tips).toBe(false);
    expect(statics.reactionsKn).toEqual([8, 0, 14]);
    expect(statics.longestSpanMm).toBe(8000);
  });

  it("takes spans between three supports as simply supported: 12 kN in the middle of the second gives 6 and 6", () => {
    const statics = beamStatics(supportsAt(0, 4000, 10000), loads([7000, 12]));
    expect(statics.reactionsKn).toEqual([0, 6, 6]);
    // 12 × 6/4 = 18 kN m.
    expect(statics.momentKnm).toBeCloseTo(18, 9);
  });

  it("gives all to the one support there is, and nothing where nothing comes down", () => {
    expect(beamStatics(supportsAt(500), loads([3000, 7])).reactionsKn).toEqual([7]);
    expect(beamStatics(supportsAt(0, 6000), [])).toMatchObject({ reactionsKn: [0, 0], momentKnm: 0, upliftKn: 0 });
  });
});
