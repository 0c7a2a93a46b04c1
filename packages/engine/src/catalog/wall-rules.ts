import type { CatalogValue } from "./catalog-value.ts";

/** Conditions under which the code's allowable wall shear may be used at all; screening of proportions, no strength. */
export const wallRules = {
  mostCutShare: {
    value: 0.5,
    unit: "ratio",
    source: "IBC 2021 3115.8.5.3: openings together at most 50 % of the wall's length",
    certainty: "memory",
  },
  leastPier: {
    value: 1219,
    unit: "mm",
    source: "IBC 2021 3115.8.5.3: a full-height piece of wall shorter than 4 ft does not count",
    certainty: "memory",
  },
} as const satisfies Record<string, CatalogValue>;
