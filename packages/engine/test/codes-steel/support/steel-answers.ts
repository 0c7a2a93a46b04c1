import { steels, type Steel } from "../../../src/catalog/materials.ts";
import { findSection } from "../../../src/catalog/sections/find-section.ts";
import type { ISection, TubeSection } from "../../../src/catalog/sections/section.ts";
import { boltStrength, type BoltGrade } from "../../../src/codes/steel/bolt.ts";
import { compression } from "../../../src/codes/steel/compression.ts";
import { webCrippling, webYielding } from "../../../src/codes/steel/concentrated-force.ts";
import { europeanColumn } from "../../../src/codes/steel/european-column.ts";
import { filletWeld } from "../../../src/codes/steel/fillet-weld.ts";
import { strongFlexure, weakFlexure } from "../../../src/codes/steel/flexure.ts";
import { axialWithBending } from "../../../src/codes/steel/interaction.ts";
import { shear } from "../../../src/codes/steel/shear.ts";
import type { SteelBasis } from "../../../src/codes/steel/steel-basis.ts";
import { branchOnTube } from "../../../src/codes/steel/tube-wall.ts";
import type { Resistance } from "../../../src/working/resistance.ts";
import type { Working } from "../../../src/working/working.ts";
import { foot, inch, kip, kipFt, ksi } from "./us-units.ts";
import { w14x132, w14x68, w14x99 } from "./w-shapes.ts";

const lrfd: SteelBasis = { edition: "2016", method: "LRFD" };
const asd: SteelBasis = { edition: "2016", method: "ASD" };
const yieldOf = (fyKsi: number): Steel => ({ ...steels.wideFlange, fyMpa: fyKsi * ksi });

export function stated(resistance: Resistance): { available: number; working: Working } {
  if (!resistance.ok) throw new Error(resistance.why);
  return resistance;
}

export const step = (working: Working, symbol: string): number => {
  const found = working.steps.find((line) => line.kind === "value" && line.symbol === symbol);
  if (found?.kind !== "value") throw new Error(`no step ${symbol}`);
  return found.result;
};

const iShape = (name: string): ISection => {
  const section = findSection(name);
  if (section?.kind !== "I") throw new Error(name);
  return section;
};
const tube = (name: string): TubeSection => {
  const section = findSection(name);
  if (section?.kind !== "tube") throw new Error(name);
  return section;
};

const pinned = (section: ISection | TubeSection, feet: number, fyKsi: number, basis: SteelBasis) =>
  stated(
    compression(
      { section, steel: yieldOf(fyKsi), lengths: { xMm: feet * foot, yMm: feet * foot, twistMm: feet * foot } },
      basis,
    ),
  );

const w18x50 = (unbracedFeet: number) =>
  stated(
    strongFlexure({ section: iShape("W18x50"), steel: yieldOf(50), unbracedMm: unbracedFeet * foot, cb: 1 }, lrfd),
  );

const beam99 = { section: w14x99, steel: yieldOf(50), unbracedMm: 14 * foot, cb: 1 };
const weld = {
  electrodeMpa: 70 * ksi,
  angleDegree: 0,
  tubeEnd: false,
  thinner: { thicknessMm: 5, steel: { ...steels.plate, fuMpa: 1000 } },
};
const flangeForce = (toEndMm: number) => ({
  section: iShape("W8x31"),
  steel: yieldOf(50),
  bearingMm: 4 * inch,
  toEndMm,
});
const bolt = (grade: BoltGrade, inches: number, force: "shear" | "tension") =>
  stated(boltStrength({ grade, diameterMm: inches * inch }, force, lrfd)).available / kip;

/** HSS3.5x3.5x1/8: t 0.116, Z 1.93 as printed; S and I do not govern a compact section. From memory. */
const hss35: TubeSection = {
  ...tube("HSS4x4x1/4"),
  name: "HSS3.5x3.5x1/8",
  depthMm: 3.5 * inch,
  widthMm: 3.5 * inch,
  wallMm: 0.116 * inch,
  flatDepthMm: (3.5 - 3 * 0.116) * inch,
  flatWidthMm: (3.5 - 3 * 0.116) * inch,
  zxMm3: 1.93 * inch ** 3,
};

/** Ours for each published case that concerns structural steel, in the unit of the case. */
export const steelAnswers: Readonly<Record<string, () => number>> = {
  "column-W14x132-lrfd-printed": () => pinned(w14x132, 30, 50, lrfd).available / kip,
  "column-W14x132-asd-printed": () => pinned(w14x132, 30, 50, asd).available / kip,
  "column-W14x132-lrfd": () => pinned(w14x132, 30, 50, lrfd).available / kip,
  "column-W14x132-asd": () => pinned(w14x132, 30, 50, asd).available / kip,
  "column-W14x68-euler": () => step(pinned(w14x68, 20, 50, lrfd).working, "F_e") / ksi,
  "column-W14x68-critical": () => step(pinned(w14x68, 20, 50, lrfd).working, "F_cr") / ksi,
  "column-W14x68": () => pinned(w14x68, 20, 50, lrfd).available / kip,
  "column-HSS6x6x3/8-46": () => pinned(tube("HSS6x6x3/8"), 12, 46, lrfd).available / kip,
  "column-HSS6x6x3/8-50": () => pinned(tube("HSS6x6x3/8"), 12, 50, lrfd).available / kip,
  "beam-W18x50-plastic-printed": () => w18x50(0).available / kipFt,
  "beam-W18x50-plastic": () => w18x50(0).available / kipFt,
  "beam-W18x50-rts": () => step(w18x50(10).working, "r_ts") / inch,
  "beam-W18x50-Lp": () => step(w18x50(10).working, "L_p") / foot,
  "beam-W18x50-Lr": () => step(w18x50(10).working, "L_r") / foot,
  "beam-column-W14x99-P": () => pinned(w14x99, 14, 50, lrfd).available / kip,
  "beam-column-W14x99-Mx": () => stated(strongFlexure(beam99, lrfd)).available / kipFt,
  "beam-column-W14x99-My": () => stated(weakFlexure(beam99, lrfd)).available / kipFt,
  "beam-column-W14x99-ratio": () =>
    axialWithBending(
      { axialN: 400 * kip, mxNmm: 250 * kipFt, myNmm: -80 * kipFt },
      {
        axial: pinned(w14x99, 14, 50, lrfd).working,
        mx: stated(strongFlexure(beam99, lrfd)).working,
        my: stated(weakFlexure(beam99, lrfd)).working,
      },
      lrfd,
    ).utilisation ?? Number.NaN,
  "weld-long-fillet": () =>
    (2 *
      stated(filletWeld({ ...weld, legMm: (3 / 16) * inch, lengthMm: 27 * inch, endLoaded: true }, lrfd)).available) /
    kip,
  "weld-fillet-lrfd": () =>
    stated(filletWeld({ ...weld, legMm: (3 / 16) * inch, lengthMm: inch, endLoaded: false }, lrfd)).available / kip / 3,
  "weld-fillet-asd": () =>
    stated(filletWeld({ ...weld, legMm: (3 / 16) * inch, lengthMm: inch, endLoaded: false }, asd)).available / kip / 3,
  "tube-HSS3.5x3.5x1/8": () =>
    stated(strongFlexure({ section: hss35, steel: yieldOf(46), unbracedMm: 0, cb: 1 }, lrfd)).available / kipFt,
  "web-yield-W8x31": () => stated(webYielding(flangeForce(20 * inch), lrfd)).available / kip,
  "web-yield-W8x31-end": () => stated(webYielding(flangeForce(2 * inch), lrfd)).available / kip,
  "web-crippling-W8x31": () => stated(webCrippling(flangeForce(20 * inch), lrfd)).available / kip,
  "web-crippling-W8x31-end": () => stated(webCrippling(flangeForce(2 * inch), lrfd)).available / kip,
  "shear-HSS6x4x1/4": () => stated(shear({ section: tube("HSS6x4x1/4"), steel: yieldOf(50) }, lrfd)).available / kip,
  "branch-HSS4x4-on-HSS8x8x3/8": () =>
    stated(
      branchOnTube(
        { section: tube("HSS8x8x3/8"), steel: yieldOf(50), useOfFace: 0 },
        { widthMm: 4 * inch, alongChordMm: 4 * inch },
        lrfd,
      ),
    ).available / kip,
  "bolt-3/4-A325-N": () => bolt("A325-N", 0.75, "shear"),
  "bolt-3/4-A325-X": () => bolt("A325-X", 0.75, "shear"),
  "bolt-3/4-A325-tension": () => bolt("A325-N", 0.75, "tension"),
  "bolt-7/8-A325-N": () => bolt("A325-N", 0.875, "shear"),
  "bolt-7/8-A325-X": () => bolt("A325-X", 0.875, "shear"),
  "bolt-7/8-A325-tension": () => bolt("A325-N", 0.875, "tension"),
  "bolt-1-A325-N": () => bolt("A325-N", 1, "shear"),
  "bolt-1-A325-X": () => bolt("A325-X", 1, "shear"),
  "bolt-1-A325-tension": () => bolt("A325-N", 1, "tension"),
  "european-SHS120x6": () =>
    europeanColumn({ curve: "a", areaMm2: 2700, radiusMm: 46.1, lengthMm: 3000, yieldMpa: 355, modulusMpa: 210e3 })
      .result.value / 1e3,
  "european-IPE200": () =>
    europeanColumn({ curve: "b", areaMm2: 2850, radiusMm: 22.4, lengthMm: 2000, yieldMpa: 235, modulusMpa: 210e3 })
      .result.value / 1e3,
  "european-HEA200": () =>
    europeanColumn({ curve: "c", areaMm2: 5380, radiusMm: 49.8, lengthMm: 3500, yieldMpa: 235, modulusMpa: 210e3 })
      .result.value / 1e3,
};
