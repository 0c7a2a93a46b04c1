import { describe, expect, it } from "vitest";
import { torsionAmplification } from "../../src/codes/loads/asce7/seismic/torsion.ts";
import { seismicDrift, stabilityCoefficient } from "../../src/codes/loads/asce7/seismic/storey-drift.ts";
import { designBasisFor } from "../../src/codes/loads/design-basis-for.ts";
import { rigidDiaphragm } from "../../src/loads/rigid-diaphragm.ts";
import { sampleHazards } from "./sample-hazards.ts";
import type { LateralLine, SeismicStorey } from "../../src/loads/seismic-storey.ts";

const { seismic } = designBasisFor("IBC 2021");
const line = (id: string, axis: "x" | "y", atMm: number, change: Partial<LateralLine> = {}): LateralLine => ({
  id,
  axis,
  atMm,
  lengthMm: 6000,
  heightMm: 2896,
  stiffnessNPerMm: 1000,
  strengthN: 50_000,
  below: { kind: "ground" },
  ...change,
});

/** 12 × 8 m with walls on all four sides, mass in the middle. */
const storey = (change: Partial<SeismicStorey> = {}): SeismicStorey => ({
  id: "Ground",
  heightMm: 2896,
  weightN: 100_000,
  centreXMm: 6000,
  centreYMm: 4000,
  outline: { x0Mm: 0, x1Mm: 12_000, y0Mm: 0, y1Mm: 8000 },
  diaphragmMm2: 96e6,
  holesMm2: 0,
  reentrantXMm: 0,
  reentrantYMm: 0,
  skewedLines: 0,
  lines: [line("s", "x", 0), line("n", "x", 8000), line("w", "y", 0), line("e", "y", 12_000)],
  ...change,
});
const kinds = (
  storeys: readonly SeismicStorey[],
  category: "C" | "D" | "E" = "D",
  edition: "IBC 2021" | "IBC 2024" = "IBC 2021",
) =>
  designBasisFor(edition)
    .seismic.irregularities(category, storeys)
    .map(({ kind, consequence }) => `${kind}: ${consequence}`);

describe("rigidDiaphragm", () => {
  // Two walls of 1000 N/mm along x at y = 0 and 8000, two along y at x = 0 and 12 000. Force 10 kN along x at y = 6000.
  // Shift 10 000/2000 = 5 mm. Kθ = 2·1000·4000² + 2·1000·6000² = 1.04e11. Turn 10 000·2000/1.04e11 = 1.923077e-4.
  // Walls x: 1000·(5 ∓ 0.769231) = 4230.77 and 5769.23 N; walls y: ±1000·1.923077e-4·6000 = ±1153.85 N.
  it("shares a force off the centre as worked by hand", () => {
    const response = rigidDiaphragm(storey().lines, storey().outline, "x", 10_000, 6000);
    expect(response?.lineForcesN.map(({ forceN }) => forceN)).toEqual([
      expect.closeTo(4230.769, 2),
      expect.closeTo(5769.231, 2),
      expect.closeTo(1153.846, 2),
      expect.closeTo(-1153.846, 2),
    ]);
    expect(response?.highEdgeMm).toBeCloseTo(5.769231, 5);
  });

  it("says nothing where nothing holds the floor", () => {
    expect(rigidDiaphragm([line("w", "y", 0)], storey().outline, "x", 1000, 0)).toBeUndefined();
    expect(rigidDiaphragm([line("s", "x", 0)], storey().outline, "x", 1000, 500)).toBeUndefined();
  });
});

describe("irregularities", () => {
  it("are none in a plain storey", () => {
    expect(kinds([storey()])).toEqual([]);
  });

  // Open side: wall n at a tenth. Centre of stiffness y = 8000·100/1100 = 727.3; x-lines Kθ = 1000·727.3² + 100·7272.7² = 5.818e9, y-lines 7.2e10 → 7.782e10.
  // Mass at 4000 + 400: arm 3672.7; shift 1/1100 = 9.0909e-4; turn 3672.7/7.782e10 = 4.7196e-8; high edge 9.0909e-4 + 4.7196e-8·7272.7 = 1.25233e-3;
  // low 9.0909e-4 − 4.7196e-8·727.3 = 8.7477e-4; mean 1.06355e-3; ratio 1.1775. With y-walls of a tenth: Kθ 1.3018e10, turn 2.8212e-7: high 2.96085e-3,
  // low 7.0391e-4, mean 1.83238e-3, ratio 1.6158 > 1.4.
  it("are torsional where one side is open and nothing across helps, extreme past 1.4 and not permitted in E", () => {
    const weakAcross = storey({
      lines: [
        line("s", "x", 0),
        line("n", "x", 8000, { stiffnessNPerMm: 100 }),
        line("w", "y", 0, { stiffnessNPerMm: 100 }),
        line("e", "y", 12_000, { stiffnessNPerMm: 100 }),
      ],
    });
    const [found] = seismic.irregularities("D", [weakAcross]).filter(({ axis }) => axis === "x");
    expect(found?.kind).toBe("extreme torsional");
    expect(found?.value).toBeCloseTo(1.6158, 3);
    expect(kinds([weakAcross], "D")).toContain("extreme torsional: noted");
    expect(kinds([weakAcross], "E")).toContain("extreme torsional: not permitted");
    expect(
      kinds([
        storey({
          lines: [
            line("s", "x", 0),
            line("n", "x", 8000, { stiffnessNPerMm: 100 }),
            line("w", "y", 0),
            line("e", "y", 12_000),
          ],
        }),
      ]),
    ).toEqual([]);
  });

  it("are re-entrant corners past 15 % both ways, holes past half the floor, lines not parallel", () => {
    expect(kinds([storey({ reentrantXMm: 1900, reentrantYMm: 1300 })])).toEqual(["re-entrant corner: noted"]);
    expect(kinds([storey({ reentrantXMm: 1900, reentrantYMm: 1100 })])).toEqual([]);
    expect(kinds([storey({ holesMm2: 50e6 })])).toEqual(["diaphragm hole: noted"]);
    expect(kinds([storey({ skewedLines: 1 })])).toEqual(["lines not parallel: noted"]);
  });

  it("are an offset or a wall on nothing, with overstrength for what is below", () => {
    const shifted = line("s", "x", 0, { below: { kind: "line", offsetMm: 1200, lengthMm: 6000 } });
    const { below: _none, ...unborne } = line("s", "x", 0);
    const rest = storey().lines.slice(1);
    expect(kinds([storey({ lines: [shifted, ...rest] })])).toEqual(["out-of-plane offset: overstrength below"]);
    expect(kinds([storey({ lines: [unborne, ...rest] })])).toEqual([
      "out-of-plane offset: overstrength below",
      "in-plane discontinuity: overstrength below",
    ]);
  });

  // 60 % of the stiffness above is exactly the limit of extreme; 65 % is soft; 75 % of one above is regular.
  it("are soft and weak storeys against the storey above", () => {
    const scaled = (stiffness: number, strength: number) =>
      storey({
        lines: storey().lines.map((one) => ({
          ...one,
          stiffnessNPerMm: 1000 * stiffness,
          strengthN: 50_000 * strength,
        })),
      });
    const above = storey({ id: "First" });
    const found = (stiffness: number, strength: number, category: "D" | "E" = "D") => [
      ...new Set(kinds([scaled(stiffness, strength), above], category)),
    ];
    expect(found(0.75, 1)).toEqual([]);
    expect(found(0.65, 1)).toEqual(["soft storey: noted"]);
    expect(found(0.55, 1, "E")).toEqual(["extreme soft storey: not permitted"]);
    expect(found(1, 0.7)).toEqual(["weak storey: noted"]);
    expect(found(1, 0.7, "E")).toEqual(["weak storey: not permitted"]);
    expect(found(1, 0.6)).toEqual(["extreme weak storey: not permitted"]);
  });

  it("are a storey half as heavy again as its neighbour in 7-16, no longer in 7-22", () => {
    const heavy = [storey(), storey({ id: "First", weightN: 160_000 }), storey({ id: "Second" })];
    expect(kinds(heavy)).toEqual(["mass: noted"]);
    expect(kinds(heavy, "D", "IBC 2024")).toEqual([]);
  });

  it("are walls a third longer than in the storey beside, and walls that stand on shorter ones", () => {
    const long = storey({ lines: storey().lines.map((one) => (one.axis === "x" ? { ...one, lengthMm: 8000 } : one)) });
    expect(kinds([long, storey({ id: "First" })])).toEqual(["vertical geometry: noted"]);
    const cut = storey({
      lines: [line("s", "x", 0, { below: { kind: "line", offsetMm: 0, lengthMm: 3000 } }), ...storey().lines.slice(1)],
    });
    expect(kinds([cut])).toEqual(["in-plane discontinuity: overstrength below"]);
  });
});

describe("redundancy", () => {
  it("is 1.0 in C, 1.3 in D, and 1.0 in D with two bays on each side of a regular plan", () => {
    const at = (category: "C" | "D", one: SeismicStorey) =>
      seismic.redundancy(category, [one], seismic.irregularities(category, [one]));
    const short = storey({ lines: storey().lines.map((wall) => ({ ...wall, lengthMm: 5000 })) }); // 5000/2896 = 1.73 bays
    expect(at("C", short).factor).toBe(1);
    expect(at("D", short).factor).toBe(1.3);
    expect(at("D", storey()).factor).toBe(1); // 6000/2896 = 2.07 bays
    expect(at("D", storey({ skewedLines: 1 })).factor).toBe(1.3);
    expect(at("D", short).conditions.map(({ holds }) => holds)).toEqual([false, true, false]);
  });
});

describe("accidental torsion", () => {
  // (1.44/1.2)² = 1.44; (2.4/1.2)² = 4 → 3; under 1.2: 1
  it("is amplified by (r/1.2)², between 1 and 3", () => {
    expect([1.1, 1.44, 2.4].map((ratio) => torsionAmplification("2016", ratio).result.value)).toEqual([
      1,
      expect.closeTo(1.44, 12),
      3,
    ]);
  });

  // the storey with one weak side of above, ratio 1.6158: (1.6158/1.2)² = 1.8131; category B takes the plain 5 %
  it("is amplified in C and above where the floor turns, not in B", () => {
    const weak = { stiffnessNPerMm: 100 };
    const turning = storey({
      lines: [line("s", "x", 0), line("n", "x", 8000, weak), line("w", "y", 0, weak), line("e", "y", 12_000, weak)],
    });
    expect(seismic.accidentalEccentricity("D", turning, "x")).toBeCloseTo(0.05 * 1.8131, 4);
    expect(seismic.accidentalEccentricity("B", turning, "x")).toBe(0.05);
  });

  // 12.4.2.2 and its exception: 0.2·S_DS above category B; 12.5: 100 % and 30 % in D to F
  it("goes with vertical shaking above B and with 30 % across from D", () => {
    const at = (sds: number) =>
      seismic.design(sampleHazards({ seismic: { ss: 0.5, s1: 0.1, siteValues: { sms: 1.5 * sds, sm1: 0.05 } } }));
    expect([at(0.2), at(0.4)].map((site) => [site.category, seismic.verticalShare(site)])).toEqual([
      ["B", 0],
      ["C", expect.closeTo(0.08, 12)],
    ]);
    expect((["B", "C", "D", "E"] as const).map((category) => seismic.orthogonalShare(category))).toEqual([
      0, 0, 0.3, 0.3,
    ]);
  });

  it("is 5 % of the width where the plan is regular or the category low", () => {
    expect(seismic.accidentalEccentricity("D", storey(), "x")).toBe(0.05);
  });
});

describe("storey drift and stability", () => {
  // Published check values 6.5: C_d·δ/I_e ≤ 0.020h: 2·20/1 = 40 mm against 0.02·2896 = 57.92 mm; category III 0.015h, I_e 1.25: 32 against 43.44
  it("is amplified by C_d/I_e and held against the table's part of the height", () => {
    const drift = seismicDrift("2016", {
      elasticMm: 20,
      storeyMm: 2896,
      cd: 2,
      importance: 1,
      riskCategory: "II",
      tolerant: false,
    });
    expect(drift.result.value).toBeCloseTo(40, 9);
    expect(drift.limit?.value).toBeCloseTo(57.92, 9);
    const third = seismicDrift("2016", {
      elasticMm: 20,
      storeyMm: 2896,
      cd: 2,
      importance: 1.25,
      riskCategory: "III",
      tolerant: false,
    });
    expect(third.utilisation).toBeCloseTo(32 / 43.44, 9);
  });

  // Published check values 6.5 (Table 12.12-1, from memory): other buildings, and four storeys with finishes that take the movement.
  it.each([
    ["I", 0.02, 0.025],
    ["II", 0.02, 0.025],
    ["III", 0.015, 0.02],
    ["IV", 0.01, 0.015],
  ] as const)("may reach the printed part of the height in risk category %s", (riskCategory, other, tolerant) => {
    const limit = (yields: boolean) =>
      seismicDrift("2016", { elasticMm: 1, storeyMm: 1000, cd: 2, importance: 1, riskCategory, tolerant: yields }).limit
        ?.value;
    expect([limit(false), limit(true)]).toEqual([expect.closeTo(1000 * other, 9), expect.closeTo(1000 * tolerant, 9)]);
  });

  // θ = 300 000·40·1/(40 000·2896·2) = 0.0518; limit min(0.5/2, 0.25) = 0.25
  it("has the stability coefficient of the text", () => {
    const theta = stabilityCoefficient("2016", {
      verticalN: 300_000,
      driftMm: 40,
      importance: 1,
      shearN: 40_000,
      storeyMm: 2896,
      cd: 2,
    });
    expect(theta.result.value).toBeCloseTo(0.051796, 5);
    expect(theta.limit?.value).toBe(0.25);
  });
});
