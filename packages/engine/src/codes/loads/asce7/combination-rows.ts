import type { LoadSymbol } from "../../../loads/load-symbol.ts";

/** `roof` stands for one of roof live load, snow and rain; `companion L` for live load that may be halved. */
export type CombinationRow = {
  readonly clause: string;
  readonly terms: readonly (readonly [LoadSymbol | "roof" | "companion L", number])[];
  /** Written "(L or 0.5W)" in the text. */
  readonly either?: readonly (readonly [LoadSymbol | "companion L", number])[];
};

/** Factors of the three roof actions where a row takes one of them. */
export type RoofFactors = { readonly main: RoofFactor; readonly companion: RoofFactor; readonly allowable: RoofFactor };
export type RoofFactor = { readonly Lr: number; readonly S: number; readonly R: number };

/** ASCE 7 2.3.1, strength, from memory. The roof term is 1 where its factors come from `RoofFactors`. */
// prettier-ignore
export const strengthRows: readonly CombinationRow[] = [
  { clause: "2.3.1 (1)", terms: [["D", 1.4]] },
  { clause: "2.3.1 (2)", terms: [["D", 1.2], ["L", 1.6], ["roof", 1]] },
  { clause: "2.3.1 (3)", terms: [["D", 1.2], ["roof", 1]], either: [["companion L", 1], ["W", 0.5]] },
  { clause: "2.3.1 (4)", terms: [["D", 1.2], ["W", 1], ["companion L", 1], ["roof", 1]] },
  { clause: "2.3.1 (5)", terms: [["D", 0.9], ["W", 1]] },
];

/** Rows whose roof term takes the main factor; the others take the companion one. */
export const mainRoofClause = "2.3.1 (3)";

/** ASCE 7 2.4.1, allowable stress, from memory. */
// prettier-ignore
export const allowableRows: readonly CombinationRow[] = [
  { clause: "2.4.1 (1)", terms: [["D", 1]] },
  { clause: "2.4.1 (2)", terms: [["D", 1], ["L", 1]] },
  { clause: "2.4.1 (3)", terms: [["D", 1], ["roof", 1]] },
  { clause: "2.4.1 (4)", terms: [["D", 1], ["L", 0.75], ["roof", 0.75]] },
  { clause: "2.4.1 (5)", terms: [["D", 1], ["W", 0.6]] },
  { clause: "2.4.1 (6)", terms: [["D", 1], ["L", 0.75], ["W", 0.45], ["roof", 0.75]] },
  { clause: "2.4.1 (7)", terms: [["D", 0.6], ["W", 0.6]] },
];

type SnowFactors = { readonly strength: number; readonly allowable: number };

/** ASCE 7 2.3.6 and 2.4.5 with the edition's snow factors; with overstrength Emh stands for Eh. From memory. */
// prettier-ignore
export const seismicRows = (snow: SnowFactors, horizontal: "Eh" | "Emh") => ({
  strength: [
    { clause: "2.3.6 (6)", terms: [["D", 1.2], ["Ev", 1], [horizontal, 1], ["companion L", 1], ["S", snow.strength]] },
    { clause: "2.3.6 (7)", terms: [["D", 0.9], ["Ev", -1], [horizontal, 1]] },
  ] satisfies CombinationRow[],
  allowable: [
    { clause: "2.4.5 (8)", terms: [["D", 1], ["Ev", 0.7], [horizontal, 0.7]] },
    { clause: "2.4.5 (9)", terms: [["D", 1], ["Ev", 0.525], [horizontal, 0.525], ["L", 0.75], ["S", snow.allowable]] },
    { clause: "2.4.5 (10)", terms: [["D", 0.6], ["Ev", -0.7], [horizontal, 0.7]] },
  ] satisfies CombinationRow[],
});
