import type { Scheme } from "@cornerway/schema";

/** The adopted building code, as the scheme's site names it. */
export type CodeEdition = Scheme["site"]["edition"];

export type RiskCategory = "I" | "II" | "III" | "IV";
export type WindExposure = "B" | "C" | "D";
/** `default` is the class a code prescribes when the ground has not been investigated. */
export type SiteClass = "A" | "B" | "BC" | "C" | "CD" | "D" | "DE" | "E" | "default";

/**
 * What a site asks of a building. Each hazard says for which edition its values were read: maps change between
 * editions, and a value of one is wrong in the formulas of the other.
 */
export type SiteHazards = {
  readonly riskCategory: RiskCategory;
  readonly wind: WindHazard;
  readonly snow: SnowHazard;
  readonly seismic: SeismicHazard;
};

export type WindHazard = {
  readonly edition: CodeEdition;
  /** Basic wind speed of the risk category, 3-second gust at 10 m, m/s. */
  readonly speedMs: number;
  readonly exposure: WindExposure;
  /** Of the ground above sea level, m. */
  readonly elevationM: number;
  /** 1 on flat ground. */
  readonly topographicFactor: number;
};

export type SnowHazard = {
  readonly edition: CodeEdition;
  /** Pa: 50-year where the edition multiplies by an importance factor, strength level where it does not. */
  readonly groundPa: number;
  readonly roofExposure: "fully exposed" | "partially exposed" | "sheltered";
  readonly thermal: "heated" | "just above freezing" | "unheated" | "below freezing";
  /** Share of winter hours with wind above 10 mph; absent where the edition has no such parameter. */
  readonly winterWind?: number;
};

export type SeismicHazard = {
  readonly edition: CodeEdition;
  /** Mapped accelerations, fractions of g. */
  readonly ss: number;
  readonly s1: number;
  readonly siteClass: SiteClass;
  /** Long-period transition, s. */
  readonly longPeriodS: number;
  /** From a site study or the edition's own database, fractions of g; they replace the site coefficients. */
  readonly siteValues?: { readonly sms: number; readonly sm1: number };
};
