import { describe, expect, it } from "vitest";
import type { FreedomName, ModelCase } from "../../src/model/analytical-model.ts";
import { bendingSection, IN_PLANE, lineModel, solved } from "./line-model.ts";

// Source: Kleinlogel's portal formulae as printed in published-values §9; numbers there for this very frame (kN, mm).
const E = 200_000;
const h = 2400;
const b = 2260;
const Ic = 5e6;
const Ib = 2e6;

function portal(foot: FreedomName[], load: ModelCase, column = Ic, girder = Ib, height = h, width = b) {
  return solved(
    lineModel({
      nodes: { a: [0, 0, 0], b: [0, 0, height], c: [width, 0, height], d: [width, 0, 0] },
      sections: { column: bendingSection(E, column, 1e8), girder: bendingSection(E, girder, 1e8) },
      beams: {
        left: { i: "a", j: "b", section: "column" },
        top: { i: "b", j: "c", section: "girder" },
        right: { i: "d", j: "c", section: "column" },
      },
      supports: {
        a: [...IN_PLANE, "ux", "uz", ...foot],
        d: [...IN_PLANE, "ux", "uz", ...foot],
        b: IN_PLANE,
        c: IN_PLANE,
      },
      load,
    }),
  );
}

const P = 50_000;
const sway = { nodal: [{ node: "b", F: [P, 0, 0, 0, 0, 0] as const }] };
const uniform = { beam_udl: [{ beam: "top", q: [0, 0, -10] as const }] };
// columns stand upright, so their local z is global y and they bend about it: end moments are the twelfth and sixth values
const inMm = (values: readonly number[] | undefined, index: number) => Math.abs(values?.[index] ?? NaN);

describe("portal frame, axially rigid", () => {
  it("pinned feet, lateral 50 kN: sway 250.80 mm, knee 60.0 kN·m", () => {
    const s = portal([], sway);
    expect(s.displacements["b"]?.[0]).toBeCloseTo(250.8, 1);
    expect(inMm(s.memberEndForces["top"], 4) / 1e6).toBeCloseTo(60, 2);
    const formula = (P * h ** 3) / (6 * E * Ic) + (P * h ** 2 * b) / (12 * E * Ib);
    expect((s.displacements["b"]?.[0] ?? NaN) / formula).toBeCloseTo(1, 4);
  });

  it("fixed feet, lateral 50 kN: sway 53.147 mm, base 38.454 and knee 21.546 kN·m", () => {
    const s = portal(["ry"], sway);
    expect(s.displacements["b"]?.[0]).toBeCloseTo(53.147, 2);
    expect(Math.abs(s.reactions["a"]?.[4] ?? NaN) / 1e6).toBeCloseTo(38.454, 2);
    expect(inMm(s.memberEndForces["top"], 4) / 1e6).toBeCloseTo(21.546, 2);
  });

  it("uniform load 10 kN/m: pinned thrust 1.3821 kN; fixed thrust 2.1942 kN, knee 3.5107, base 1.7553 kN·m", () => {
    expect(Math.abs(portal([], uniform).reactions["a"]?.[0] ?? NaN) / 1e3).toBeCloseTo(1.3821, 3);
    const s = portal(["ry"], uniform);
    expect(Math.abs(s.reactions["a"]?.[0] ?? NaN) / 1e3).toBeCloseTo(2.1942, 3);
    expect(inMm(s.memberEndForces["top"], 4) / 1e6).toBeCloseTo(3.5107, 3);
    expect(Math.abs(s.reactions["a"]?.[4] ?? NaN) / 1e6).toBeCloseTo(1.7553, 3);
  });

  it("fixed feet, sway load 5 kN shared at the top, I 4e6 throughout, 3000 by 4000: 10.8665 mm, base 4.43182 kN·m (closed_forms.json)", () => {
    const half = [2500, 0, 0, 0, 0, 0] as const;
    const s = portal(
      ["ry"],
      {
        nodal: [
          { node: "b", F: half },
          { node: "c", F: half },
        ],
      },
      4e6,
      4e6,
      3000,
      4000,
    );
    expect(s.displacements["b"]?.[0]).toBeCloseTo(10.8665, 3);
    expect(Math.abs(s.reactions["a"]?.[4] ?? NaN) / 1e6).toBeCloseTo(4.43182, 4);
  });
});

describe("portal frames of other proportions against Kleinlogel's formulae, to 1e-4", () => {
  // girder to column: as stiff, four times stiffer, four times softer; low and wide, tall and narrow
  it.each([
    [5e6, 5e6, 2700, 6058],
    [2e6, 8e6, 2400, 12_192],
    [8e6, 2e6, 5800, 2438],
  ])("columns I %d, girder I %d, %d high, %d wide", (column, girder, height, width) => {
    const made = (foot: FreedomName[], load: ModelCase) => portal(foot, load, column, girder, height, width);
    const k = girder / width / (column / height);
    const pinned = made([], uniform);
    const thrust = (10 * width * width) / (4 * height * (2 * k + 3));
    expect(Math.abs(pinned.reactions["a"]?.[0] ?? NaN) / thrust).toBeCloseTo(1, 4);
    expect(inMm(pinned.memberEndForces["top"], 4) / (thrust * height)).toBeCloseTo(1, 4);
    const fixed = made(["ry"], uniform);
    const knee = (10 * width * width) / (6 * (k + 2));
    expect(Math.abs(fixed.reactions["a"]?.[0] ?? NaN) / ((10 * width * width) / (4 * height * (k + 2)))).toBeCloseTo(
      1,
      4,
    );
    expect(inMm(fixed.memberEndForces["top"], 4) / knee).toBeCloseTo(1, 4);
    expect(Math.abs(fixed.reactions["a"]?.[4] ?? NaN) / (knee / 2)).toBeCloseTo(1, 4);
    const swayed = made(["ry"], sway);
    const base = ((P * height) / 2) * ((3 * k + 1) / (6 * k + 1));
    const drift = ((P * height ** 3) / (12 * E * column)) * ((3 * k + 2) / (6 * k + 1));
    expect(Math.abs(swayed.reactions["a"]?.[4] ?? NaN) / base).toBeCloseTo(1, 4);
    expect((swayed.displacements["b"]?.[0] ?? NaN) / drift).toBeCloseTo(1, 3);
  });
});

describe("Vierendeel of three equal panels 1500 by 2000, 10 kN down at both inner top joints (published-values §9)", () => {
  const nodes = Object.fromEntries(
    [0, 1, 2, 3].flatMap((n) => [
      [`b${n}`, [n * 1500, 0, 0]],
      [`t${n}`, [n * 1500, 0, 2000]],
    ]),
  ) as Record<string, [number, number, number]>;
  const s = solved(
    lineModel({
      nodes,
      sections: { s: bendingSection(E, 4e6, 1e8) },
      beams: Object.fromEntries([
        ...[0, 1, 2].flatMap((n) => [
          [`bottom${n}`, { i: `b${n}`, j: `b${n + 1}`, section: "s" }],
          [`top${n}`, { i: `t${n}`, j: `t${n + 1}`, section: "s" }],
        ]),
        ...[0, 1, 2, 3].map((n) => [`post${n}`, { i: `b${n}`, j: `t${n}`, section: "s" }]),
      ]),
      supports: {
        ...Object.fromEntries(Object.keys(nodes).map((id) => [id, IN_PLANE])),
        b0: [...IN_PLANE, "ux", "uz"],
        b3: [...IN_PLANE, "uz"],
      },
      load: {
        nodal: [
          { node: "t1", F: [0, 0, -10_000, 0, 0, 0] },
          { node: "t2", F: [0, 0, -10_000, 0, 0, 0] },
        ],
      },
    }),
  );

  it("the loaded joints go down 3.723 mm", () => expect(-(s.displacements["t1"]?.[2] ?? NaN)).toBeCloseTo(3.723, 3));

  it("end-panel chords carry 5.0 kN shear each and end moments 3563.7 and 3936.3 kN·mm", () => {
    const top = s.memberEndForces["top0"] ?? [];
    expect(Math.abs(top[2] ?? NaN)).toBeCloseTo(5000, 0);
    expect(Math.abs(top[4] ?? NaN) / 1e3).toBeCloseTo(3563.7, 0);
    expect(Math.abs(top[10] ?? NaN) / 1e3).toBeCloseTo(3936.3, 0);
  });

  it("end posts carry 3563.7 kN·mm at the joint, as the chord does", () => {
    expect(inMm(s.memberEndForces["post0"], 11) / 1e3).toBeCloseTo(3563.7, 0);
  });

  it("mid-panel chords carry 6.289 kN axially and 1211.2 kN·mm", () => {
    const top = s.memberEndForces["top1"] ?? [];
    expect(Math.abs(top[0] ?? NaN) / 1e3).toBeCloseTo(6.289, 2);
    expect(Math.abs(top[4] ?? NaN) / 1e3).toBeCloseTo(1211.2, 0);
  });
});
