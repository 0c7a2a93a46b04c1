import { describe, expect, it } from "vitest";
import { steels } from "../../src/catalog/materials.ts";
import { pressedChannel, squareTube } from "../../src/catalog/sections/container-members.ts";
import { corrugatedSheet, folds } from "../../src/catalog/sections/corrugated-sheet.ts";
import { findSection } from "../../src/catalog/sections/find-section.ts";
import type { ISection } from "../../src/catalog/sections/section.ts";
import { sheetShear } from "../../src/checks/sheet-shear/sheet-shear.ts";
import { pressedCompression } from "../../src/codes/cold-formed/pressed-compression.ts";
import { pressedFlexure } from "../../src/codes/cold-formed/pressed-flexure.ts";
import { pressedShear } from "../../src/codes/cold-formed/pressed-shear.ts";
import { thinTubeFlexure } from "../../src/codes/cold-formed/thin-tube.ts";
import { pressedWebCrippling } from "../../src/codes/cold-formed/web-crippling.ts";
import { compression } from "../../src/codes/steel/compression.ts";
import { webCrippling, webYielding } from "../../src/codes/steel/concentrated-force.ts";
import { strongFlexure, weakFlexure } from "../../src/codes/steel/flexure.ts";
import { shear } from "../../src/codes/steel/shear.ts";
import { sideWallCrippling } from "../../src/codes/steel/tube-wall.ts";
import type { Resistance } from "../../src/working/resistance.ts";

/**
 * Units do not matter: a member drawn larger by s, at the same stresses, bears s² times the force, s³ times the moment and
 * s times the flow. A formula that mixes units or drops a length fails this.
 */
const basis = { edition: "2016", method: "LRFD" } as const;
const steel = steels.weathering;

const scaledI = (name: string, s: number): ISection => {
  const section = findSection(name);
  if (section?.kind !== "I") throw new Error(name);
  const powers: Record<string, number> = { Mm: 1, Mm2: 2, Mm3: 3, Mm4: 4, Mm6: 6 };
  const scaled = Object.entries(section).map(([key, value]) => {
    const unit = /Mm\d?$/.exec(key)?.[0] ?? "";
    return [key, typeof value === "number" ? value * s ** (powers[unit] ?? 0) : value];
  });
  return { ...section, ...Object.fromEntries(scaled) };
};
const channel = (s: number) =>
  pressedChannel("c", { depthMm: 200 * s, headMm: 75 * s, footMm: 40 * s, thicknessMm: 2 * s });
const tube = (s: number) => squareTube("t", 100 * s, 2 * s);

const cases: readonly (readonly [title: string, power: number, run: (s: number) => Resistance])[] = [
  [
    "column, I",
    2,
    (s) =>
      compression(
        { section: scaledI("W8x18", s), steel, lengths: { xMm: 4000 * s, yMm: 2000 * s, twistMm: 2000 * s } },
        basis,
      ),
  ],
  [
    "column, slender tube",
    2,
    (s) => compression({ section: tube(s), steel, lengths: { xMm: 2000 * s, yMm: 2000 * s, twistMm: 1 } }, basis),
  ],
  [
    "beam, I, inelastic",
    3,
    (s) => strongFlexure({ section: scaledI("W8x18", s), steel, unbracedMm: 3000 * s, cb: 1 }, basis),
  ],
  [
    "beam, I, elastic",
    3,
    (s) => strongFlexure({ section: scaledI("W14x22", s), steel, unbracedMm: 9000 * s, cb: 1 }, basis),
  ],
  ["beam, I, weak axis", 3, (s) => weakFlexure({ section: scaledI("W6x15", s), steel, unbracedMm: 0, cb: 1 }, basis)],
  ["beam, slender tube", 3, (s) => strongFlexure({ section: tube(s), steel, unbracedMm: 0, cb: 1 }, basis)],
  ["web in shear", 2, (s) => shear({ section: scaledI("W8x18", s), steel }, basis)],
  [
    "web yielding",
    2,
    (s) => webYielding({ section: scaledI("W8x31", s), steel, bearingMm: 50 * s, toEndMm: 1000 * s }, basis),
  ],
  [
    "web crippling, I",
    2,
    (s) => webCrippling({ section: scaledI("W8x31", s), steel, bearingMm: 50 * s, toEndMm: 50 * s }, basis),
  ],
  [
    "side wall crippling",
    2,
    (s) =>
      sideWallCrippling({ section: tube(s), steel, useOfFace: 0.5 }, { bearingMm: 50 * s, toEndMm: 500 * s }, basis),
  ],
  [
    "pressed column",
    2,
    (s) =>
      pressedCompression(
        { section: channel(s), steel, lengths: { strongMm: 3000 * s, weakMm: 1000 * s, twistMm: 1500 * s } },
        basis,
      ),
  ],
  [
    "pressed beam, local",
    3,
    (s) => pressedFlexure({ section: channel(s), steel, pressed: "head", unbracedMm: 0, cb: 1 }, basis),
  ],
  [
    "pressed beam, lateral",
    3,
    (s) => pressedFlexure({ section: channel(s), steel, pressed: "foot", unbracedMm: 1500 * s, cb: 1 }, basis),
  ],
  ["pressed shear", 2, (s) => pressedShear({ section: channel(s), steel }, basis)],
  [
    "pressed web crippling",
    2,
    (s) =>
      pressedWebCrippling(
        { section: channel(s), steel, where: "end, one flange", bearingMm: 50 * s, insideRadiusMm: 2 * s },
        basis,
      ),
  ],
  [
    "thin tube in bending",
    3,
    (s) => thinTubeFlexure({ section: squareTube("t", 60 * s, 3 * s), steel, unbracedMm: 30_000 * s, cb: 1 }, basis),
  ],
  [
    "sheet in shear",
    1,
    (s) => {
      const { outerFlatMm, slopeMm, innerFlatMm, depthMm } = folds.side;
      const fold = {
        outerFlatMm: outerFlatMm * s,
        slopeMm: slopeMm * s,
        innerFlatMm: innerFlatMm * s,
        depthMm: depthMm * s,
      };
      return sheetShear(
        { sheet: corrugatedSheet(fold, 1.6 * s), steel, heightMm: 2350 * s, modulusMpa: 200_000 },
        "LRFD",
      );
    },
  ],
];

describe("units do not matter", () => {
  it.each(cases)("%s scales with the power %d of its size", (_, power, run) => {
    const [one, other] = [run(1), run(25.4)];
    if (!one.ok || !other.ok) throw new Error("refused");
    expect(Math.abs(other.available / one.available / 25.4 ** power - 1)).toBeLessThan(1e-9);
  });
});

describe("thicker is never weaker", () => {
  const thicknesses = [1, 1.5, 2, 3, 4, 6];
  const expectRising = (run: (t: number) => Resistance) => {
    const values = thicknesses.map((t) => {
      const result = run(t);
      if (!result.ok) throw new Error(result.why);
      return result.available;
    });
    for (const [at, value] of values.entries()) expect(value).toBeGreaterThan(values[at - 1] ?? 0);
  };
  const channelOf = (t: number) => pressedChannel("c", { depthMm: 160, headMm: 48, footMm: 30, thicknessMm: t });
  const lengths = { strongMm: 2500, weakMm: 600, twistMm: 600 };

  it("pressed channel in compression", () =>
    expectRising((t) => pressedCompression({ section: channelOf(t), steel, lengths }, basis)));
  it("pressed channel in bending, either flange pressed", () => {
    expectRising((t) =>
      pressedFlexure({ section: channelOf(t), steel, pressed: "head", unbracedMm: 600, cb: 1 }, basis),
    );
    expectRising((t) =>
      pressedFlexure({ section: channelOf(t), steel, pressed: "foot", unbracedMm: 600, cb: 1 }, basis),
    );
  });
  it("pressed channel in shear", () => expectRising((t) => pressedShear({ section: channelOf(t), steel }, basis)));
  it("pressed web under a bearing force, bends as tight as the sheet is thick", () =>
    expectRising((t) =>
      pressedWebCrippling(
        { section: channelOf(t), steel, where: "inside, one flange", bearingMm: 80, insideRadiusMm: t },
        basis,
      ),
    ));
});
