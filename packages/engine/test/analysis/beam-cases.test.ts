import { describe, expect, it } from "vitest";
import { bendingSection, everywhere, solved, straightBeam, lineModel } from "./line-model.ts";

// Source: beam formulae of Roark and of the AISC manual tables (published-values §9; from memory, each reproduced by hand).
const L = 6000;
const w = 5;
const P = 10_000;
const E = 200_000;
const I = 4e6;
const EI = E * I;
const section = bendingSection(E, I);
const down = (node: string) => ({ nodal: [{ node, F: [0, 0, -P, 0, 0, 0] as const }] });

function beam(ends: Parameters<typeof straightBeam>[3], load: Parameters<typeof straightBeam>[4], parts = 12) {
  return solved(lineModel(straightBeam(L, parts, section, ends, load)));
}

const PINNED = { n0: ["ux", "uz"], n12: ["uz"] } as const satisfies Record<string, readonly string[]>;
const pinned = { n0: [...PINNED.n0], n12: [...PINNED.n12] };
const FIXED = ["ux", "uz", "ry"] as const;
const fixed = { n0: [...FIXED], n12: [...FIXED] };

const deflection = (solution: ReturnType<typeof beam>, node: string) => -(solution.displacements[node]?.[2] ?? NaN);
/** Bending moment at the start of a member, sagging positive: the end moment about local y, with local z up. */
const momentAtStart = (solution: ReturnType<typeof beam>, member: string) =>
  solution.memberEndForces[member]?.[4] ?? NaN;

describe("one beam against its closed form, to 1e-6", () => {
  it("simple span, uniform load: 5wL⁴/384EI and wL²/8 at mid-span", () => {
    const s = beam(pinned, everywhere(12, w));
    expect(deflection(s, "n6") / ((5 * w * L ** 4) / (384 * EI))).toBeCloseTo(1, 6);
    expect(Math.abs(momentAtStart(s, "b6")) / ((w * L ** 2) / 8)).toBeCloseTo(1, 6);
    expect(s.reactions["n0"]?.[2]).toBeCloseTo((w * L) / 2, 4);
  });

  it("simple span, point load at mid-span: PL³/48EI and PL/4", () => {
    const s = beam(pinned, down("n6"));
    expect(deflection(s, "n6") / ((P * L ** 3) / (48 * EI))).toBeCloseTo(1, 6);
    expect(Math.abs(momentAtStart(s, "b6")) / ((P * L) / 4)).toBeCloseTo(1, 6);
  });

  it("simple span, point load at a = L/4: moment Pab/L and deflection Pa²b²/3EIL under the load", () => {
    const s = beam(pinned, down("n3"));
    const a = L / 4;
    const b = L - a;
    expect(Math.abs(momentAtStart(s, "b3")) / ((P * a * b) / L)).toBeCloseTo(1, 6);
    expect(deflection(s, "n3") / ((P * a * a * b * b) / (3 * EI * L))).toBeCloseTo(1, 6);
  });

  it("fixed ends, uniform load: wL²/12 at the ends and wL⁴/384EI", () => {
    const s = beam(fixed, everywhere(12, w));
    expect(Math.abs(momentAtStart(s, "b0")) / ((w * L ** 2) / 12)).toBeCloseTo(1, 6);
    expect(deflection(s, "n6") / ((w * L ** 4) / (384 * EI))).toBeCloseTo(1, 6);
  });

  it("fixed ends, point load at mid-span: PL/8 and PL³/192EI", () => {
    const s = beam(fixed, down("n6"));
    expect(Math.abs(momentAtStart(s, "b0")) / ((P * L) / 8)).toBeCloseTo(1, 6);
    expect(deflection(s, "n6") / ((P * L ** 3) / (192 * EI))).toBeCloseTo(1, 6);
  });

  it("propped, uniform load: wL²/8 at the fixed end and 5wL/8 there; largest deflection near wL⁴/185EI", () => {
    const s = beam({ n0: [...FIXED], n12: ["uz"] }, everywhere(12, w));
    expect(Math.abs(momentAtStart(s, "b0")) / ((w * L ** 2) / 8)).toBeCloseTo(1, 6);
    expect(s.reactions["n0"]?.[2]).toBeCloseTo((5 * w * L) / 8, 4);
    const largest = Math.max(...Object.keys(s.displacements).map((node) => deflection(s, node)));
    expect(largest / ((w * L ** 4) / (185 * EI))).toBeCloseTo(1, 2);
  });

  it("cantilever: wL⁴/8EI under uniform load, PL³/3EI under a tip load", () => {
    expect(deflection(beam({ n0: [...FIXED] }, everywhere(12, w)), "n12") / ((w * L ** 4) / (8 * EI))).toBeCloseTo(
      1,
      6,
    );
    expect(deflection(beam({ n0: [...FIXED] }, down("n12")), "n12") / ((P * L ** 3) / (3 * EI))).toBeCloseTo(1, 6);
  });

  it("two equal spans, uniform load: w(L/2)²/8 over the middle and reactions 3/8, 10/8, 3/8 of w(L/2)", () => {
    const s = beam({ n0: ["ux", "uz"], n6: ["uz"], n12: ["uz"] }, everywhere(12, w));
    const span = L / 2;
    expect(Math.abs(momentAtStart(s, "b6")) / ((w * span ** 2) / 8)).toBeCloseTo(1, 6);
    expect(["n0", "n6", "n12"].map((node) => (s.reactions[node]?.[2] ?? NaN) / (w * span))).toEqual([
      expect.closeTo(3 / 8, 8),
      expect.closeTo(10 / 8, 8),
      expect.closeTo(3 / 8, 8),
    ]);
  });

  it("loads at third points: PL/3 and 23PL³/648EI", () => {
    const s = beam(pinned, { nodal: [...down("n4").nodal, ...down("n8").nodal] });
    expect(Math.abs(momentAtStart(s, "b6")) / ((P * L) / 3)).toBeCloseTo(1, 6);
    expect(deflection(s, "n6") / ((23 * P * L ** 3) / (648 * EI))).toBeCloseTo(1, 6);
  });

  it("shear deformation adds PL/4GAs at mid-span of a simple span (Timoshenko), exact with two members", () => {
    const As = 800;
    const deep = { ...section, Asy: As, Asz: As };
    const s = solved(lineModel(straightBeam(L, 2, deep, { n0: ["ux", "uz"], n2: ["uz"] }, down("n1"))));
    const expected = (P * L ** 3) / (48 * EI) + (P * L) / (4 * (E / 2.6) * As);
    expect(deflection(s, "n1") / expected).toBeCloseTo(1, 6);
  });

  it("one member gives the same end forces as twelve", () => {
    const one = beam({ n0: [...FIXED], n1: ["uz"] }, everywhere(1, w), 1);
    const twelve = beam({ n0: [...FIXED], n12: ["uz"] }, everywhere(12, w), 12);
    expect(momentAtStart(one, "b0") / momentAtStart(twelve, "b0")).toBeCloseTo(1, 9);
  });

  // the two channels below with E 210,000 and Ix of published-values §3.2: 167.4 and 326.7 cm⁴, W 26.8 cm³
  it("floor cross member over 2259 mm under 1.392 N/mm: 0.888 kN·m, 33.1 MPa and 1.34 mm (published-values §9)", () => {
    const channel = bendingSection(210_000, 167.4e4);
    const s = solved(lineModel(straightBeam(2259, 2, channel, { n0: ["ux", "uz"], n2: ["uz"] }, everywhere(2, 1.392))));
    expect(Math.abs(momentAtStart(s, "b1")) / 1e6).toBeCloseTo(0.888, 3);
    expect(Math.abs(momentAtStart(s, "b1")) / 26.8e3).toBeCloseTo(33.1, 1);
    expect(deflection(s, "n1")).toBeCloseTo(1.34, 2);
  });

  it("bottom rail alone over 5853 mm under 2.0 kN/m: 8.56 kN·m and 44.5 mm (published-values §9)", () => {
    const channel = bendingSection(210_000, 326.7e4);
    const s = solved(lineModel(straightBeam(5853, 2, channel, { n0: ["ux", "uz"], n2: ["uz"] }, everywhere(2, 2))));
    expect(Math.abs(momentAtStart(s, "b1")) / 1e6).toBeCloseTo(8.56, 2);
    expect(Math.abs(deflection(s, "n1") / 44.5 - 1)).toBeLessThan(2e-3); // printed to three figures
  });
});

// Source: AISC Design Examples F.1-1A and F.6, AISC 360 Commentary C2 (published-values §7.3; from memory, each reproduced by
// hand there). Inches, kips and feet as printed. The rows of §7.3 with axial load beside bending (C2 with P > 0), and the two
// beam-columns of §9, are second order: no business of a solution without geometric stiffness.
describe("printed worked cases, first order", () => {
  const IN = 25.4;
  const FT = 12 * IN;
  const KIP = 4448.2216152605; // N, from the pound-force 4.4482216152605 N
  const STEEL = 29_000 * (KIP / IN ** 2);
  const span = (lengthMm: number, inertiaIn4: number, kipPerFt: number) =>
    solved(
      lineModel(
        straightBeam(
          lengthMm,
          2,
          bendingSection(STEEL, inertiaIn4 * IN ** 4),
          { n0: ["ux", "uz"], n2: ["uz"] },
          everywhere(2, kipPerFt * (KIP / FT)),
        ),
      ),
    );
  const momentKipFt = (s: ReturnType<typeof beam>) => Math.abs(momentAtStart(s, "b1")) / (KIP * FT);

  it("W18x50 (I 800 in⁴) over 35 ft: 266 kip-ft under 1.74 kip/ft and 1.09 in under 0.75 kip/ft", () => {
    expect(momentKipFt(span(35 * FT, 800, 1.74))).toBeCloseTo(266.4, 1);
    expect(deflection(span(35 * FT, 800, 0.75), "n1") / IN).toBeCloseTo(1.09, 2);
  });

  it("tube 3.5 in over 7.5 ft under 1.2·0.145 + 1.6·0.435 kip/ft: 6.12 kip-ft", () => {
    expect(momentKipFt(span(7.5 * FT, 2.9, 1.2 * 0.145 + 1.6 * 0.435))).toBeCloseTo(6.12, 2);
  });

  it("W14x48 (I 484 in⁴) over 28 ft under 0.2 kip/ft without axial load: 235 kip-in and 0.197 in", () => {
    const s = span(28 * FT, 484, 0.2);
    expect(momentKipFt(s) * 12).toBeCloseTo(235.2, 1);
    expect(deflection(s, "n1") / IN).toBeCloseTo(0.197, 3);
  });
});
