import { describe, expect, it } from "vitest";
import {
  amplificationOf,
  memberAmplification,
  mostBowedN,
  storeyAmplification,
} from "../../src/codes/steel/amplification.ts";
import { secondOrder, type PlaneBar } from "./support/geometric-frame.ts";
import { benchmarkBow, portalLean, portalReference } from "./support/second-order-answers.ts";

const lrfd = { edition: "2016", method: "LRFD" } as const;
/** The code takes 0.8 of the stiffness; a frame that is to be compared is given to it stiffer by that. */
const unreduced = 1 / 0.8;

const bowOf = (inertiaMm4: number, lengthMm: number, axialN: number) =>
  memberAmplification({ inertiaMm4: inertiaMm4 * unreduced, lengthMm, axialN }, lrfd);
const stepOf = (working: ReturnType<typeof bowOf>, symbol: string): number => {
  const step = working.steps.find((one) => one.kind === "value" && one.symbol === symbol);
  return step?.kind === "value" ? step.result : Number.NaN;
};

// AISC 360 commentary C2, benchmark 1 (from memory): W14x48, I 484 in⁴, 28 ft, 0.2 kip/ft; moments in the middle 235.2
// kip-in without thrust and 268.9, 313.5, 375.4 under 150, 300, 450 kip: ratios 1.143, 1.333, 1.596.
describe("B₁ against benchmark 1 of the commentary", () => {
  it.each([
    [150, 268.9 / 235.2],
    [300, 313.5 / 235.2],
    [450, 375.4 / 235.2],
  ])("under %i kip is within 1.5 %% of the exact ratio", (kip, exact) => {
    expect(Math.abs(benchmarkBow(kip) / exact - 1)).toBeLessThan(0.015);
  });
});

describe("a pinned bar under even load, eight bars with geometric stiffness", () => {
  const [inertia, length, axial] = [5e6, 3000, 300_000];
  const middle = (compressionN: number): number => {
    const bars = Array.from({ length: 8 }, (_, n): PlaneBar => {
      return { from: n, to: n + 1, inertiaMm4: inertia, compressionN };
    });
    const nodes = Array.from({ length: 9 }, (_, n) => [(n * length) / 8, 0] as const);
    const forces = Object.fromEntries([1, 2, 3, 4, 5, 6, 7].map((n) => [3 * n + 1, -1000]));
    return secondOrder({ nodes, bars, held: [0, 1, 25] }, forces)[13] ?? Number.NaN;
  };

  it("sags B₁ times as much as without thrust, within 1 %", () => {
    const bow = stepOf(bowOf(inertia, length, axial), "B_1");
    expect(bow).toBeGreaterThan(1.3);
    expect(Math.abs(middle(axial) / middle(0) / bow - 1)).toBeLessThan(0.01);
  });

  it("is at its limit where the elastic force of the reduced stiffness is three times the thrust", () => {
    // hand: 0.8·π²·200 000·5·10⁶/3000² = 877 298 N (E of the engine is 200 000 MPa), a third of it 292 433 N
    expect(mostBowedN({ inertiaMm4: inertia, lengthMm: length })).toBeCloseTo(292_433, -1);
    const { utilisation } = memberAmplification({ inertiaMm4: inertia, lengthMm: length, axialN: 292_433 }, lrfd);
    expect(utilisation).toBeCloseTo(1, 5);
  });
});

// AISC 360 commentary C2, benchmark 2 (from memory): a cantilever W14x48 of 28 ft, pushed with 1 kip at its head under P;
// moment at its foot HL·tan α/α and head HL³/3EI · 3(tan α − α)/α³ with α = √(PL²/EI), E 29 000 ksi. Printed there with shear:
// 336, 470, 601 kip-in under 0, 100, 150 kip.
describe("B₂ against benchmark 2 of the commentary, a cantilever", () => {
  const [inertia, length, push] = [484 * 25.4 ** 4, 28 * 304.8, 4448.222];
  const stiff = 199_948;
  const exact = (kip: number) => {
    const alpha = Math.sqrt((kip * 4448.222 * length ** 2) / (stiff * inertia));
    return { moment: Math.tan(alpha) / alpha, head: (3 * (Math.tan(alpha) - alpha)) / alpha ** 3 };
  };
  const reference = (kip: number): number => {
    const bars = [0, 1, 2, 3].map((n): PlaneBar => {
      return { from: n, to: n + 1, inertiaMm4: (inertia * stiff) / 200_000, compressionN: kip * 4448.222 };
    });
    const nodes = [0, 1, 2, 3, 4].map((n) => [0, (n * length) / 4] as const);
    return secondOrder({ nodes, bars, held: [0, 1, 2] }, { 12: push })[12] ?? Number.NaN;
  };

  it.each([
    [100, 470 / 336],
    [150, 601 / 336],
  ])("under %i kip: the reference is the closed form, and B₂ is on the safe side within 8 %%", (kip, printed) => {
    const { moment, head } = exact(kip);
    expect(Math.abs(moment / printed - 1)).toBeLessThan(0.01);
    expect(Math.abs(reference(kip) / reference(0) / head - 1)).toBeLessThan(1e-3);
    const driftMm = (push * length ** 3) / (3 * stiff * inertia) / unreduced;
    const storey = { verticalN: kip * 4448.222, shearN: push, driftMm, heightMm: length };
    const lean = amplificationOf(storeyAmplification(storey, lrfd));
    expect(lean / moment).toBeGreaterThanOrEqual(1);
    expect(lean / moment).toBeLessThan(1.08);
  });
});

// Portal on pinned bases; each column carries half of the load.
describe("B₂ of a portal with pinned bases", () => {
  it.each([50_000, 100_000])("under %i N is the reference's enlargement or up to 8 %% more", (verticalN) => {
    const exact = portalReference(verticalN);
    expect(exact).toBeGreaterThan(1.1);
    expect(portalLean(verticalN) / exact).toBeGreaterThanOrEqual(1);
    expect(portalLean(verticalN) / exact).toBeLessThan(1.08);
  });

  it("is without end where the storey cannot stand, and its utilisation is finite", () => {
    const working = storeyAmplification({ verticalN: 1e6, shearN: 1000, driftMm: 5, heightMm: 2400 }, lrfd);
    expect(amplificationOf(working)).toBe(Infinity);
    expect(working.utilisation).toBeGreaterThan(1);
  });
});
