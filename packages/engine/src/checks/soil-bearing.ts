import type { Scheme } from "@cornerway/schema";
import { openWorking } from "../working/open-working.ts";
import type { Clause } from "../working/working.ts";
import { checkOf, type Check } from "./check.ts";

type BuildingCode = Scheme["site"]["edition"];

/** Classes of material of IBC Table 1806.2. */
export const soilClasses = [
  "crystalline bedrock",
  "sedimentary and foliated rock",
  "sandy gravel and gravel",
  "sand, silty or clayey sand and gravel",
  "clay and silt",
] as const;
export type SoilClass = (typeof soilClasses)[number];

/** Presumptive values: bearing kPa, lateral kPa per metre of depth, friction, cohesion kPa; undefined where none is given. */
export type PresumptiveSoil = {
  readonly bearingKpa: number;
  readonly lateralKpaPerM: number;
  readonly friction?: number;
  readonly cohesionKpa?: number;
};

const kpaPerPsf = 0.04788;

/** 1 psf per foot in kPa per metre. */
const kpaPerMOfPsfPerFt = kpaPerPsf / 0.3048;

type PrintedSoil = readonly [
  psf: number,
  psfPerFt: number,
  friction: number | undefined,
  cohesionPsf: number | undefined,
];

const printed: Readonly<Record<SoilClass, PrintedSoil>> = {
  "crystalline bedrock": [12_000, 1200, 0.7, undefined],
  "sedimentary and foliated rock": [4000, 400, 0.35, undefined],
  "sandy gravel and gravel": [3000, 200, 0.35, undefined],
  "sand, silty or clayey sand and gravel": [2000, 150, 0.25, undefined],
  "clay and silt": [1500, 100, undefined, 130],
};

/** The table as the adopted edition has it; its values were read in a reproduction of the 2012 edition. */
const clauseIn = (edition: BuildingCode): Clause => ({
  document: "IBC",
  edition: edition.slice(4),
  place: "Table 1806.2",
  certainty: "memory",
});

/** Values of the code's table where no report is attached. */
export function presumptiveSoil(soil: SoilClass): PresumptiveSoil {
  const [psf, psfPerFt, friction, cohesionPsf] = printed[soil];
  return {
    bearingKpa: psf * kpaPerPsf,
    lateralKpaPerM: psfPerFt * kpaPerMOfPsfPerFt,
    ...(friction === undefined ? {} : { friction }),
    ...(cohesionPsf === undefined ? {} : { cohesionKpa: cohesionPsf * kpaPerPsf }),
  };
}

/** A pad on the ground: allowable-stress force N, plan mm; a soil class, or a value from an attached report. */
export type PadOnSoil = {
  readonly forceN: number;
  readonly lengthMm: number;
  readonly widthMm: number;
  readonly soil:
    | { readonly kind: "presumed"; readonly class: SoilClass }
    | { readonly kind: "report"; readonly bearingKpa: number; readonly source: string };
};

/** Mean pressure under a pad loaded in its middle against the allowable bearing. */
export function soilBearing(pad: PadOnSoil, edition: BuildingCode): Check {
  const working = openWorking("Bearing on soil", clauseIn(edition));
  working.let("P", Math.abs(pad.forceN), "N", "force on the pad, allowable-stress level", "derived", "analysis");
  working.let("L", pad.lengthMm, "mm", "pad length", "derived");
  working.let("B", pad.widthMm, "mm", "pad width", "derived");
  working.compute("q", "P/(L*B)*1000", "kPa");
  if (pad.soil.kind === "report") {
    working.let("q_a", pad.soil.bearingKpa, "kPa", "allowable bearing", "published", pad.soil.source);
  } else {
    const { bearingKpa } = presumptiveSoil(pad.soil.class);
    working.let(
      "q_a",
      bearingKpa,
      "kPa",
      `presumptive bearing, ${pad.soil.class}`,
      "common practice",
      "IBC 2012 Table 1806.2, as reproduced",
    );
    working.note("The class of soil is assumed until a report is attached.");
  }
  return checkOf({ element: "pad", limitState: "bearing on soil" }, working.against("q", "q_a"));
}
