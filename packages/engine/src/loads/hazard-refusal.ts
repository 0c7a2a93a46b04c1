import type { CodeEdition, SiteHazards } from "./site-hazards.ts";

/** Why hazard values cannot be used. */
export type HazardRefusal =
  | {
      readonly code: "other-edition";
      readonly hazard: HazardName;
      readonly given: CodeEdition;
      readonly adopted: CodeEdition;
    }
  | {
      readonly code: "value-missing";
      readonly hazard: HazardName;
      readonly value: string;
      readonly adopted: CodeEdition;
    }
  | {
      readonly code: "value-out-of-range";
      readonly hazard: HazardName;
      readonly value: string;
      readonly given: number;
    };

export type HazardName = "wind" | "snow" | "seismic";

const hazardNames: readonly HazardName[] = ["wind", "snow", "seismic"];

/** Hazards read for another edition than the adopted one, one refusal each. */
export const editionRefusals = (hazards: SiteHazards, adopted: CodeEdition): HazardRefusal[] =>
  hazardNames
    .filter((hazard) => hazards[hazard].edition !== adopted)
    .map((hazard) => ({ code: "other-edition", hazard, given: hazards[hazard].edition, adopted }));

/** Values no site has: negative, not a number, or nothing where something must be. */
export const rangeRefusals = ({ wind, snow, seismic }: SiteHazards): HazardRefusal[] => [
  ...outside("wind", "speedMs", wind.speedMs, 10, 150),
  ...outside("wind", "topographicFactor", wind.topographicFactor, 1, 3),
  ...outside("wind", "elevationM", wind.elevationM, -500, 6000),
  ...outside("snow", "groundPa", snow.groundPa, 0, 50_000),
  ...outside("seismic", "ss", seismic.ss, 0, 6),
  ...outside("seismic", "s1", seismic.s1, 0, 3),
  ...outside("seismic", "longPeriodS", seismic.longPeriodS, 1, 30),
];

/** The refusal in words. */
export function hazardRefusalText(refusal: HazardRefusal): string {
  switch (refusal.code) {
    case "other-edition":
      return `The ${refusal.hazard} values were read for ${refusal.given}, but ${refusal.adopted} is adopted. Read them again for ${refusal.adopted}.`;
    case "value-missing":
      return `${refusal.adopted} needs ${refusal.value} for ${refusal.hazard}, and none is given.`;
    case "value-out-of-range":
      return `The ${refusal.hazard} value ${refusal.value} = ${refusal.given} is not one a site can have.`;
  }
}

const outside = (hazard: HazardName, value: string, given: number, least: number, most: number): HazardRefusal[] =>
  given >= least && given <= most ? [] : [{ code: "value-out-of-range", hazard, value, given }];
