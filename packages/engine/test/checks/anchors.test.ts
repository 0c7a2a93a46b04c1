import { describe, expect, it } from "vitest";
import { anchors } from "../../src/checks/anchors.ts";
import { padConcrete } from "../../src/checks/pad-concrete.ts";
import type { AnchorGroup } from "../../src/codes/concrete/anchor-group.ts";
import { anchorPryout, anchorShearBreakout, anchorSteelShear } from "../../src/codes/concrete/anchor-shear.ts";
import { anchorBreakout, anchorPullout, anchorSteelTension } from "../../src/codes/concrete/anchor-tension.ts";
import type { Resistance } from "../../src/working/resistance.ts";

const expectWithin = (ours: number, hand: number, part: number) =>
  expect(Math.abs(ours / hand - 1), `ours ${ours}, reference ${hand}`).toBeLessThan(part);
const nominal = (resistance: Resistance): number => (resistance.ok ? resistance.nominal : Number.NaN);

const far = { leftMm: 5000, rightMm: 5000, frontMm: 5000, backMm: 5000 };
const one: AnchorGroup = {
  count: 1,
  spacingXMm: 0,
  spacingYMm: 0,
  edge: far,
  depthMm: 6 * 25.4,
  diameterMm: 20,
  steelAreaMm2: 245,
  tensileMpa: 400,
  installed: "cast in, headed",
  headMm2: 600,
  concreteMpa: 3000 * 0.00689476,
  concreteThicknessMm: 400,
  seismic: false,
};
/** 1 lb is 4.448222 N. */
const kip = 4448.222;

describe("anchors, ACI 318-19 chapter 17 from memory", () => {
  it("depth 6 in, f'c 3000 psi, far from edges: 19.3 kip cast in, 13.7 post-installed (derived; metric k_c 10 and 7 are rounded)", () => {
    expectWithin(nominal(anchorBreakout(one)) / kip, 19.3, 0.006);
    expectWithin(nominal(anchorBreakout({ ...one, installed: "post-installed" })) / kip, 13.7, 0.025);
  });

  it("at the very edge, half the area and 0.7 are left: 0.35 of the strength", () => {
    const edge = { ...far, rightMm: 0 };
    expectWithin(nominal(anchorBreakout({ ...one, edge })), 0.35 * nominal(anchorBreakout(one)), 1e-9);
  });

  it("four anchors 3 h_ef apart break out as four; close together, as less", () => {
    const four = { ...one, count: 4, spacingXMm: 3 * one.depthMm, spacingYMm: 3 * one.depthMm };
    expectWithin(nominal(anchorBreakout(four)), 4 * nominal(anchorBreakout(one)), 1e-9);
    const close = { ...four, spacingXMm: 100, spacingYMm: 100 };
    expectWithin(nominal(anchorBreakout(close)), ((457.2 + 100) / 457.2) ** 2 * nominal(anchorBreakout(one)), 1e-9);
  });

  it("steel 245 mm² × 400 = 98 kN in tension, 58.8 kN in shear, 47.0 on grout; head 8 × 600 × 20.7 = 99.3 kN", () => {
    expectWithin(nominal(anchorSteelTension(one)), 98_000, 1e-9);
    expectWithin(nominal(anchorSteelShear(one, false)), 58_800, 1e-9);
    expectWithin(nominal(anchorSteelShear(one, true)), 47_040, 1e-9);
    expectWithin(nominal(anchorPullout(one)), 8 * 600 * 20.684, 1e-4);
  });

  it("seismic cuts concrete in tension to three quarters and leaves steel", () => {
    const shaken = { ...one, seismic: true };
    expectWithin(nominal(anchorBreakout(shaken)), 0.75 * nominal(anchorBreakout(one)), 1e-9);
    expectWithin(nominal(anchorSteelTension(shaken)), nominal(anchorSteelTension(one)), 1e-12);
  });

  it("shear 150 mm from an edge: V_b = min(0.6 × 7.62^0.2 × √20, 3.7) × 4.548 × 1837 = 30.9 kN, cut area whole (by hand)", () => {
    // l_e 152.4, l_e/d 7.62: 0.6 × 1.501 × 4.472 = 4.027 → 3.7; × √20.684 × 150^1.5
    const edge = { ...far, rightMm: 150 };
    expectWithin(nominal(anchorShearBreakout({ ...one, edge })), 3.7 * 4.548 * 1837.1, 0.001);
  });

  it("thin concrete and a near corner: A_Vc/A_Vco 0.444 × ψ_h 1.5; corner 100 off: 0.722 × ψ_ed 0.833 (by hand)", () => {
    // r 225: (225 + 225) × 100/101 250 = 0.4444, ψ_h √(225/100) = 1.5; (100 + 225) × 225/101 250 = 0.7222, ψ_ed 0.7 + 0.3 × 100/225
    const edge = { ...far, rightMm: 150 };
    const whole = nominal(anchorShearBreakout({ ...one, edge }));
    expectWithin(
      nominal(anchorShearBreakout({ ...one, edge, concreteThicknessMm: 100 })),
      whole * 0.4444444 * 1.5,
      1e-6,
    );
    const corner = { ...edge, frontMm: 100 };
    expectWithin(nominal(anchorShearBreakout({ ...one, edge: corner })), whole * 0.7222222 * 0.8333333, 1e-6);
  });

  it("a thin anchor near its edge: 0.6 (l_e/d)^0.2 √d rules below 3.7: d 10, l_e 80: 0.6 × 1.516 × 3.162 = 2.876 (by hand)", () => {
    const edge = { ...far, rightMm: 150 };
    expectWithin(nominal(anchorShearBreakout({ ...one, edge, diameterMm: 10 })), 2.876 * 4.548 * 1837.1, 0.001);
  });

  it("pry-out is twice the breakout in tension for a deep anchor, once for one under 63.5 mm", () => {
    expectWithin(nominal(anchorPryout(one)), 2 * nominal(anchorBreakout(one)), 1e-9);
    const shallow = { ...one, depthMm: 60 };
    expectWithin(nominal(anchorPryout(shallow)), nominal(anchorBreakout(shallow)), 1e-9);
  });

  it("no edge nearer ever strengthens, no anchor deeper ever weakens", () => {
    let last = 0;
    for (const rightMm of [0, 50, 100, 200, 300]) {
      const value = nominal(anchorBreakout({ ...one, edge: { ...far, rightMm } }));
      expect(value).toBeGreaterThanOrEqual(last);
      last = value;
    }
    expect(nominal(anchorBreakout({ ...one, depthMm: 200 }))).toBeGreaterThan(nominal(anchorBreakout(one)));
  });
});

describe("anchors(plate)", () => {
  const plate = { element: "pad", group: one, pullN: 30_000, shearN: 10_000, grouted: true } as const;

  it("makes three checks in tension, three in shear and one of both, which is their worst ratios over 1.2", () => {
    const checks = anchors(plate);
    expect(checks).toHaveLength(7);
    const use = checks.map((check) => (check.ok ? check.utilisation : Number.NaN));
    const [pull, push] = [Math.max(...use.slice(0, 3)), Math.max(...use.slice(3, 6))];
    expectWithin(use[6] ?? Number.NaN, (pull + push) / 1.2, 1e-9);
  });

  it("pressed and unsheared there is nothing to check; a post-installed anchor's pull-out is refused", () => {
    expect(anchors({ ...plate, pullN: -1, shearN: 0 })).toEqual([]);
    const refusedOnes = anchors({ ...plate, group: { ...one, installed: "post-installed" } }).filter(({ ok }) => !ok);
    expect(refusedOnes).toHaveLength(1);
  });
});

describe("padConcrete, ACI 318-19 chapter 14 from memory, by hand", () => {
  const pad = { lengthMm: 1000, widthMm: 1000, depthMm: 350, plateLengthMm: 200, plateWidthMm: 200, concreteMpa: 25 };
  const use = (change: Partial<typeof pad>, forceN = 100_000) =>
    padConcrete({ ...pad, ...change }, forceN).map((check) => (check.ok ? check.utilisation : check.why));

  it("1 m square, 350 deep, plate 200, f'c 25: m_n 31.5 kN, P_n 393.8 kN in bending; punching 0.22 × 5 × 2000 × 300 = 660 kN", () => {
    // m_n 0.42 × 5 × 300²/6 = 31 500 N·mm/mm; × 2 × 10⁶/400²
    const [bending, punching] = use({});
    expectWithin(Number(bending), 100_000 / (0.6 * 393_750), 1e-9);
    expectWithin(Number(punching), 100_000 / (0.6 * 660_000), 1e-9);
  });

  it("a pad under 200 mm deep or smaller than its plate is refused", () => {
    for (const change of [{ depthMm: 199 }, { widthMm: 150 }])
      expect(use(change)).toEqual(Array.from({ length: 2 }, () => "proportions outside the clause's limits"));
  });

  it("a plate as large as the pad leaves nothing to bend", () => {
    expect(Number(use({ plateLengthMm: 1000, plateWidthMm: 1000 })[0])).toBeLessThan(1e-5);
  });
});
