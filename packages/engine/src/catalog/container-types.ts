import type { Certainty, ContainerType } from "@cornerway/schema";
import type { CatalogValue } from "./catalog-value.ts";

/** What is known of one ISO 668 type. Lengths mm, masses kg; every value with its source and certainty. */
export type ContainerTypeRow = Readonly<Record<ContainerProperty, CatalogValue>>;

export type ContainerProperty =
  | "length"
  | "width"
  | "height"
  | "holeSpacingLengthwise"
  | "holeSpacingCrosswise"
  | "intermediateHoleSpacing"
  | "rating"
  | "tareLeast"
  | "tareMost"
  | "lengthTolerance"
  | "widthTolerance"
  | "fittingLength"
  | "fittingWidth"
  | "fittingHeight"
  | "fittingProudOfRoof"
  | "baseAboveFitting"
  | "topSideRailDepth"
  | "topSideRailWidth"
  | "bottomSideRailDepth"
  | "bottomSideRailWidth"
  | "frontPostAlongLength"
  | "frontPostAlongWidth"
  | "doorPostAlongLength"
  | "doorPostAlongWidth"
  | "frontHeaderDepth"
  | "frontHeaderWidth"
  | "frontSillDepth"
  | "frontSillWidth"
  | "doorHeaderDepth"
  | "doorHeaderWidth"
  | "doorSillDepth"
  | "doorSillWidth"
  | "crossMemberPitch"
  | "crossMemberDepth"
  | "crossMemberFlange"
  | "floorThickness"
  | "sideSheetThickness"
  | "endSheetThickness"
  | "roofSheetThickness"
  | "sideCorrugationPitch"
  | "sideCorrugationDepth"
  | "endCorrugationPitch"
  | "endCorrugationDepth"
  | "roofCorrugationPitch"
  | "roofCorrugationDepth";

const row = (code: keyof typeof lengths, height: keyof typeof heights, extra: Extra): ContainerTypeRow => ({
  ...everyType,
  ...lengths[code],
  ...heights[height],
  ...extra,
});

type LengthProperty =
  "length" | "lengthTolerance" | "holeSpacingLengthwise" | "intermediateHoleSpacing" | "bottomSideRailDepth";
type HeightProperty = "height" | "doorHeaderDepth";
type ExtraProperty = "rating" | "tareLeast" | "tareMost";
type Rows<P extends ContainerProperty> = Readonly<Record<P, CatalogValue>>;
type Extra = Rows<ExtraProperty>;

const value = (number: number, unit: CatalogValue["unit"], certainty: Certainty, source: string): CatalogValue => ({
  value: number,
  unit,
  source,
  certainty,
});
const sizeMm = (number: number) =>
  value(number, "mm", "published", "ISO 668:2013, table of external dimensions, read in a public summary");
const iso668Mm = (number: number, place: string) => value(number, "mm", "memory", `ISO 668 ${place}`);
const genericMm = (number: number, remark = "") =>
  value(number, "mm", "common practice", `generic dry-freight purchase specifications${remark}`);
const assumedMm = (number: number, remark: string) =>
  value(number, "mm", "common practice", `assumed outline: ${remark}`);

const holesLengthwise = (number: number) =>
  iso668Mm(number, "Table A.1, S; reproduced by length − tolerance/2 − 2 × (101.5 − 0.75)");

const length = (
  lengthMm: number,
  toleranceMm: number,
  holesMm: number,
  bottomRailMm: number,
  intermediateMm: number,
): Rows<LengthProperty> => ({
  length: sizeMm(lengthMm),
  lengthTolerance: iso668Mm(toleranceMm, "Table 2, +0/−tolerance"),
  holeSpacingLengthwise: holesLengthwise(holesMm),
  /** 0 where the type has fittings at its corners only. */
  intermediateHoleSpacing: iso668Mm(intermediateMm, "Annex A: fittings at the 40 ft spacing in 45 ft types; 0 = none"),
  bottomSideRailDepth: genericMm(bottomRailMm, ", channel, range 150 to 165"),
});

const lengths = {
  "45 ft": length(13716, 10, 13509, 162, 11985),
  "40 ft": length(12192, 10, 11985, 162, 0),
  "30 ft": length(9125, 10, 8918, 162, 0),
  "20 ft": length(6058, 6, 5853, 158, 0),
  "10 ft": length(2991, 5, 2787, 158, 0),
} as const;

/** Header depth is what is left: height − door opening − 12.5 − sill 150 − 6; door openings from memory of ISO 1496-1. */
const height = (heightMm: number, doorHeaderMm: number): Rows<HeightProperty> => ({
  height: sizeMm(heightMm),
  doorHeaderDepth: value(
    doorHeaderMm,
    "mm",
    "memory",
    "height less the least door opening (2566, 2261, 2134; ISO 1496-1), 12.5, a sill of 150 and 6",
  ),
});

const heights = {
  "9 ft 6": height(2896, 161.5),
  "8 ft 6": height(2591, 161.5),
  "8 ft": height(2438, 135.5),
} as const;

const everyType = {
  width: sizeMm(2438),
  widthTolerance: iso668Mm(5, "Table 2, +0/−5"),
  holeSpacingCrosswise: iso668Mm(2259, "Table A.1, P; reproduced by 2438 − 2.5 − 2 × (89 − 0.75)"),
  fittingLength: value(178, "mm", "memory", "ISO 1161, body of the corner fitting"),
  fittingWidth: value(162, "mm", "memory", "ISO 1161, body of the corner fitting"),
  fittingHeight: value(118, "mm", "memory", "ISO 1161, body of the corner fitting"),
  fittingProudOfRoof: value(6, "mm", "memory", "ISO 1496-1 cl. 5.2: top fittings at least 6 above every other part"),
  baseAboveFitting: value(12.5, "mm", "memory", "ISO 1496-1 cl. 5.3: base 12.5 +5/−1.5 above the fittings' underside"),
  topSideRailDepth: genericMm(60, ", SHS 60 × 60 × 3"),
  topSideRailWidth: genericMm(60, ", SHS 60 × 60 × 3"),
  bottomSideRailWidth: genericMm(48, ", channel flange"),
  frontPostAlongLength: assumedMm(160, "pressed 6 mm front post, require a measured one where it governs"),
  frontPostAlongWidth: assumedMm(150, "pressed 6 mm front post, require a measured one where it governs"),
  doorPostAlongLength: assumedMm(160, "pressed outer with channel 113 × 40 × 12, require a measured one"),
  doorPostAlongWidth: value(76, "mm", "memory", "(2438 − 2286)/2, least door opening width of ISO 1496-1"),
  frontHeaderDepth: genericMm(60, ", SHS 60 × 60 × 3"),
  frontHeaderWidth: genericMm(60, ", SHS 60 × 60 × 3"),
  frontSillDepth: genericMm(150, ", pressed 4.0 to 4.5, depth taken as the door sill's"),
  frontSillWidth: genericMm(50, ", pressed 4.0 to 4.5, width taken as the door sill's"),
  doorHeaderWidth: genericMm(100, ", pressed U with plate; width assumed"),
  doorSillDepth: genericMm(150, ", about 150 × 46 to 54"),
  doorSillWidth: genericMm(50, ", about 150 × 46 to 54"),
  crossMemberPitch: genericMm(300, ", range 250 to 310"),
  crossMemberDepth: genericMm(122, ", C 122 × 45 × 40 × 4"),
  crossMemberFlange: genericMm(45, ", C 122 × 45 × 40 × 4"),
  floorThickness: genericMm(28, ", plywood or bamboo"),
  sideSheetThickness: genericMm(1.6, ", range 1.5 to 2.0"),
  endSheetThickness: genericMm(2, ", range 1.6 to 2.0"),
  roofSheetThickness: genericMm(2, ", range 1.6 to 2.0"),
  sideCorrugationPitch: genericMm(278, ", 72 + 68 + 70 + 68"),
  sideCorrugationDepth: genericMm(36),
  endCorrugationPitch: genericMm(250, ", 110 + 18 + 104 + 18"),
  endCorrugationDepth: genericMm(45.6),
  roofCorrugationPitch: genericMm(209, ", 91 + 13.5 + 91 + 13.5"),
  roofCorrugationDepth: genericMm(20),
} as const;

const rated2013 = (kg: number) => value(kg, "kg", "published", "ISO 668:2013, ratings, read in a public summary");
const rated2020 = (kg: number) =>
  value(kg, "kg", "memory", "ISO 668:2020, ratings; the type is not in earlier editions");
const tare = (leastKg: number, mostKg: number, certainty: Certainty, source: string) => ({
  tareLeast: value(leastKg, "kg", certainty, source),
  tareMost: value(mostKg, "kg", certainty, source),
});
const carriers = (leastKg: number, mostKg: number) =>
  tare(leastKg, mostKg, "common practice", "range of carriers' tables; read the plate");
const scaled = (leastKg: number, mostKg: number) =>
  tare(leastKg, mostKg, "common practice", "judged from carriers' ranges of the neighbouring types; read the plate");

/** Every ISO 668 type the scheme knows. */
export const containerTypeRows: Readonly<Record<ContainerType, ContainerTypeRow>> = {
  "1EEE": row("45 ft", "9 ft 6", { rating: rated2013(30480), ...carriers(4600, 4900) }),
  "1EE": row("45 ft", "8 ft 6", { rating: rated2013(30480), ...scaled(4400, 4700) }),
  "1AAA": row("40 ft", "9 ft 6", { rating: rated2013(30480), ...carriers(3800, 4200) }),
  "1AA": row("40 ft", "8 ft 6", { rating: rated2013(30480), ...carriers(3600, 3950) }),
  "1A": row("40 ft", "8 ft", { rating: rated2013(30480), ...scaled(3500, 3850) }),
  "1BBB": row("30 ft", "9 ft 6", { rating: rated2013(30480), ...scaled(3000, 3400) }),
  "1BB": row("30 ft", "8 ft 6", { rating: rated2013(30480), ...scaled(2850, 3200) }),
  "1CCC": row("20 ft", "9 ft 6", { rating: rated2020(36000), ...scaled(2300, 2550) }),
  "1CC": row("20 ft", "8 ft 6", { rating: rated2013(30480), ...carriers(2150, 2400) }),
  "1C": row("20 ft", "8 ft", { rating: rated2013(30480), ...scaled(2050, 2300) }),
  "1D": row("10 ft", "8 ft", { rating: rated2013(10160), ...carriers(1200, 1400) }),
};
