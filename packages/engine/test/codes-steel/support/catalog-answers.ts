import { steels } from "../../../src/catalog/materials.ts";
import { containerMembers } from "../../../src/catalog/sections/container-members.ts";
import { corrugatedSheet, folds, type Fold } from "../../../src/catalog/sections/corrugated-sheet.ts";
import { doorPost } from "../../../src/catalog/sections/door-post.ts";
import { frontPostHeld } from "../../../src/checks/front-post.ts";
import { isoProofLoad } from "../../../src/checks/iso-proof-load.ts";
import { localRailMoment } from "../../../src/checks/rail-at-seat.ts";
import { annexD } from "../../../src/checks/sheet-shear/annex-d.ts";
import { foldStiffness } from "../../../src/checks/sheet-shear/fold-stiffness.ts";
import { presumptiveSoil } from "../../../src/codes/loads/presumptive-soil.ts";
import type { AnchorGroup } from "../../../src/codes/concrete/anchor-group.ts";
import { anchorBreakout } from "../../../src/codes/concrete/anchor-tension.ts";
import { tableWallShear } from "../../../src/codes/containers/wall-shear-table.ts";
import { bucklingCurves, europeanColumn, type BucklingCurve } from "../../../src/codes/steel/european-column.ts";
import type { Resistance } from "../../../src/working/resistance.ts";
import { step } from "./steel-answers.ts";
import { kip } from "./us-units.ts";

type Answers = Record<string, () => number>;
type Plane = { areaMm2: number; ixMm4: number; iyMm4: number; sxMm3: number; syMm3: number; jMm4: number };

const nominal = (resistance: Resistance): number => (resistance.ok ? resistance.nominal : Number.NaN);

const sectionAnswers = (name: string, section: Plane): Answers => ({
  [`section|${name}|A`]: () => section.areaMm2,
  [`section|${name}|Ix`]: () => section.ixMm4 / 1e4,
  [`section|${name}|Iy`]: () => section.iyMm4 / 1e4,
  [`section|${name}|Wx`]: () => section.sxMm3 / 1e3,
  [`section|${name}|Wy`]: () => section.syMm3 / 1e3,
  [`section|${name}|J`]: () => section.jMm4 / 1e4,
});

function foldAnswers(panel: keyof typeof folds, thicknessMm: number): Answers {
  const sheet = corrugatedSheet(folds[panel], thicknessMm);
  const stiffness = foldStiffness(sheet, 210_000, 0.3);
  const name = `${panel} ${thicknessMm}`;
  return {
    [`fold|${name}|s/w`]: () => sheet.developedMm / sheet.pitchMm,
    [`fold|${name}|A`]: () => sheet.areaMm2PerMm * 1e3,
    [`fold|${name}|I`]: () => sheet.iMm4PerMm / 10,
    [`fold|${name}|W`]: () => sheet.sMm3PerMm,
    [`stiffness|${name}|Dx`]: () => stiffness.weakNmm,
    [`stiffness|${name}|Dy`]: () => stiffness.strongNmm,
    [`stiffness|${name}|Gt`]: () => stiffness.shearNPerMm / 1e3,
  };
}

function annexDAnswers(name: string, fold: Fold, thicknessMm: number, heightMm: number, fyMpa: number): Answers {
  const sheet = corrugatedSheet(fold, thicknessMm);
  const working = annexD({ sheet, steel: { ...steels.weathering, fyMpa }, heightMm, modulusMpa: 210_000 });
  return Object.fromEntries(
    ["λ_l", "χ_l", "λ_g", "χ_g"].map((symbol) => [`annex-d|${name}|${symbol}`, () => step(working, symbol)]),
  );
}

const curveAnswer = (curve: BucklingCurve, slenderness: number): number => {
  const lengthMm = slenderness * 10 * Math.PI * Math.sqrt(210e3 / 235);
  return (
    europeanColumn({ curve, areaMm2: 1, radiusMm: 10, lengthMm, yieldMpa: 235, modulusMpa: 210e3 }).result.value / 235
  );
};

const curves: readonly BucklingCurve[] = ["a0", "a", "b", "c", "d"];
const curveAnswers: Answers = Object.fromEntries(
  curves
    .filter((curve) => curve in bucklingCurves)
    .flatMap((curve) =>
      ["0.3", "0.7", "1.0", "1.5"].map((at) => [`curve|${curve}|${at}`, () => curveAnswer(curve, Number(at))]),
    ),
);

const side = (type: "1EEE" | "1AAA" | "1BBB" | "1CC" | "1D") =>
  tableWallShear({ type, wall: "side" }, "IBC 2021").result.value;
const wallAnswers: Answers = {
  ...Object.fromEntries(
    (["1EEE", "1AAA", "1BBB", "1CC", "1D"] as const).flatMap((type) => [
      [`wall|${type}|side`, () => side(type)],
      [`wall|${type}|iso`, () => side(type) / 0.0145939],
    ]),
  ),
  "wall|any|end": () => tableWallShear({ type: "1CC", wall: "end" }, "IBC 2021").result.value,
};

const anchor: AnchorGroup = {
  count: 1,
  spacingXMm: 0,
  spacingYMm: 0,
  edge: { leftMm: 5000, rightMm: 5000, frontMm: 5000, backMm: 5000 },
  depthMm: 152.4,
  diameterMm: 20,
  steelAreaMm2: 245,
  tensileMpa: 400,
  installed: "cast in, headed",
  concreteMpa: 20.684,
  concreteThicknessMm: 400,
  seismic: false,
};

const soils = ["crystalline bedrock", "sedimentary or foliated rock", "gravel", "sand", "clay or silt"] as const;

const frontPost = (fyMpa: number) =>
  nominal(
    frontPostHeld({ steel: { ...steels.weathering, fyMpa }, clearMm: 2350 }, { edition: "2016", method: "LRFD" }),
  ) / 1e3;

const rail = (forceN: number) =>
  localRailMoment({ element: "top side rail", railIMm4: 371_000, sheet: corrugatedSheet(folds.side, 1.6), forceN });

/** Ours for the cases on sections, folds, walls, posts, anchors and soil, in the unit of the case. */
export const catalogAnswers: Readonly<Answers> = {
  ...Object.assign({}, ...Object.entries(containerMembers).map(([name, section]) => sectionAnswers(name, section))),
  ...sectionAnswers("door corner post", doorPost),
  ...foldAnswers("side", 1.6),
  ...foldAnswers("side", 2),
  ...foldAnswers("end", 2),
  ...foldAnswers("roof", 2),
  ...annexDAnswers("side 1.6", folds.side, 1.6, 2350, 343),
  ...annexDAnswers("side 2.0", folds.side, 2, 2350, 343),
  ...annexDAnswers("girder", { outerFlatMm: 300, slopeMm: 200, innerFlatMm: 300, depthMm: 150 }, 3, 1500, 355),
  ...curveAnswers,
  ...wallAnswers,
  ...Object.fromEntries(
    [192_000, 213_360, 50_800].map((kg) => [
      `proof|${kg}`,
      () => isoProofLoad({ allowableStackingKg: kg, edition: "1990" }).result.value / 1e3,
    ]),
  ),
  "rail|T": () => step(rail(1), "T") / 1e3,
  "rail|M": () => rail(20_000).result.value / 1e6,
  "post|front|343": () => frontPost(343),
  "post|front|thesis": () => frontPost(358),
  "anchor|cast": () => nominal(anchorBreakout(anchor)) / kip,
  "anchor|post": () => nominal(anchorBreakout({ ...anchor, installed: "post-installed" })) / kip,
  ...Object.fromEntries(
    soils.flatMap((soil) => [
      [`soil|${soil}|bearing`, () => presumptiveSoil("2021", soil).bearingPa / 1e3],
      [`soil|${soil}|lateral`, () => presumptiveSoil("2021", soil).lateralPaPerM / 1e3],
    ]),
  ),
};
