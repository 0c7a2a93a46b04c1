import type { PresumptiveSoil, SoilClass } from "../../loads/soil-class.ts";
import { fromPsf } from "./us-units.ts";

/**
 * Building code Table 1806.2, as reproduced in a textbook for the 2012 edition; later editions from memory unchanged.
 */
export function presumptiveSoil(edition: string, soil: SoilClass): PresumptiveSoil {
  const [bearing, lateral, friction, cohesion] = rows[soil];
  return {
    soil,
    bearingPa: fromPsf(bearing),
    lateralPaPerM: fromPsf(lateral) / 0.3048,
    friction,
    cohesionPa: cohesion === undefined ? undefined : fromPsf(cohesion),
    clause: { document: "IBC", edition, place: "Table 1806.2", certainty: "memory" },
  };
}

type Row = readonly [
  bearingPsf: number,
  lateralPsfPerFt: number,
  friction: number | undefined,
  cohesionPsf: number | undefined,
];

const rows: Readonly<Record<SoilClass, Row>> = {
  "crystalline bedrock": [12_000, 1200, 0.7, undefined],
  "sedimentary or foliated rock": [4000, 400, 0.35, undefined],
  gravel: [3000, 200, 0.35, undefined],
  sand: [2000, 150, 0.25, undefined],
  "clay or silt": [1500, 100, undefined, 130],
};
