import type { CodeEdition, SiteHazards } from "../../src/loads/site-hazards.ts";

const msPerMph = 0.44704;
const paPerPsf = 47.88025898;

export type HazardChange = {
  readonly edition?: CodeEdition;
  readonly riskCategory?: SiteHazards["riskCategory"];
  readonly wind?: Partial<SiteHazards["wind"]> & { readonly mph?: number };
  readonly snow?: Partial<SiteHazards["snow"]> & { readonly psf?: number };
  readonly seismic?: Partial<SiteHazards["seismic"]>;
};

/** 115 mph in exposure C, 20 psf of ground snow, S_S 1.0 and S_1 0.4 on class D; changed as asked. */
export function sampleHazards(change: HazardChange = {}): SiteHazards {
  const edition = change.edition ?? "IBC 2021";
  const { mph = 115, ...wind } = change.wind ?? {};
  const { psf = 20, ...snow } = change.snow ?? {};
  return {
    riskCategory: change.riskCategory ?? "II",
    wind: { edition, speedMs: mph * msPerMph, exposure: "C", elevationM: 0, topographicFactor: 1, ...wind },
    snow: {
      edition,
      groundPa: psf * paPerPsf,
      roofExposure: "partially exposed",
      thermal: "heated",
      ...(edition === "IBC 2024" ? { winterWind: 0.45 } : {}),
      ...snow,
    },
    seismic: {
      edition,
      ss: 1,
      s1: 0.4,
      siteClass: "D",
      longPeriodS: 8,
      ...(edition === "IBC 2024" ? { siteValues: { sms: 1.1, sm1: 0.76 } } : {}),
      ...change.seismic,
    },
  };
}
