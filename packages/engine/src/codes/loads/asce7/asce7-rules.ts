import type { DesignBasis } from "../../../loads/design-basis.ts";
import { editionRefusals, rangeRefusals, type HazardRefusal } from "../../../loads/hazard-refusal.ts";
import type { CodeEdition, SiteHazards } from "../../../loads/site-hazards.ts";
import { fromPsf } from "../us-units.ts";
import { actionGaps } from "./action-gaps.ts";
import type { Asce7Edition } from "./asce7-edition.ts";
import { combinations, factors2016, factors2022 } from "./combinations.ts";
import { reducedLiveLoad, roofLiveLoad } from "./live-load-reduction.ts";
import { occupancyLoad } from "./live-loads.ts";
import { designSpectrumMissing } from "./seismic/design-spectrum.ts";
import { seismicRules } from "./seismic/seismic-rules.ts";
import { snowDrift } from "./snow/drift.ts";
import { flatRoofSnow } from "./snow/flat-roof.ts";
import { claddingPressure } from "./wind/cladding.ts";
import { claddingZoneWidths } from "./wind/cladding-zones.ts";
import { windLoadCases } from "./wind/load-cases.ts";
import { mainSystemWind } from "./wind/main-system.ts";
import { shapeLimits } from "./wind/shape-limits.ts";

/** What ASCE 7 rules in a building code: everything of a design basis but the code set itself and the ground. */
export function asce7Rules(
  edition: Asce7Edition,
  adopted: CodeEdition,
): Omit<DesignBasis, "codes" | "notional" | "soil"> {
  const factors = edition === "2016" ? factors2016 : factors2022;
  return {
    refuse: (hazards) => [
      ...editionRefusals(hazards, adopted),
      ...rangeRefusals(hazards),
      ...missing(edition, adopted, hazards),
    ],
    gaps: (hazards) => actionGaps(edition, hazards),
    combinations: (request) => combinations(factors, request),
    gravity: {
      occupancy: (occupancy, servedPa) => occupancyLoad(edition, occupancy, servedPa),
      reducedFloor: (request) => reducedLiveLoad(edition, request),
      roofLive: (areaM2) => roofLiveLoad(edition, areaM2),
    },
    snow: {
      flatRoof: ({ snow, wind, riskCategory }) => flatRoofSnow(edition, snow, wind.exposure, riskCategory),
      drift: ({ snow, riskCategory }, balanced, step) => snowDrift(edition, snow, riskCategory, balanced, step),
      seismicShare: (balancedPa) =>
        balancedPa > fromPsf(snowCounts[edition].abovePsf) ? snowCounts[edition].share : 0,
    },
    wind: {
      shapeLimits: (form) => shapeLimits(edition, form),
      mainSystem: ({ wind }, shape, envelope) => mainSystemWind(edition, wind, shape, envelope),
      loadCases: windLoadCases,
      claddingZones: claddingZoneWidths,
      cladding: ({ wind }, heightMm, internal, part) => claddingPressure(edition, wind, heightMm, internal, part),
    },
    seismic: seismicRules(edition),
  };
}

/** 12.7.2 (5), from memory: 20 % of flat roof snow above 30 psf, in 7-22 15 % above 45 psf. */
const snowCounts: Readonly<Record<Asce7Edition, { readonly abovePsf: number; readonly share: number }>> = {
  "2016": { abovePsf: 30, share: 0.2 },
  "2022": { abovePsf: 45, share: 0.15 },
};

function missing(edition: Asce7Edition, adopted: CodeEdition, { snow, seismic }: SiteHazards): HazardRefusal[] {
  const refusal = (hazard: "snow" | "seismic", value: string): HazardRefusal => ({
    code: "value-missing",
    hazard,
    value,
    adopted,
  });
  return [
    ...(edition === "2022" && snow.groundPa > 0 && snow.winterWind === undefined
      ? [refusal("snow", "the winter wind parameter")]
      : []),
    ...(designSpectrumMissing(edition, seismic) ? [refusal("seismic", "S_MS and S_M1 of the site")] : []),
  ];
}
