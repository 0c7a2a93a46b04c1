import type { SiteHazards } from "@cornerway/schema";

export type { CodeEdition, SiteHazards } from "@cornerway/schema";

export type RiskCategory = SiteHazards["riskCategory"];
export type WindHazard = SiteHazards["wind"];
export type WindExposure = WindHazard["exposure"];
export type SnowHazard = SiteHazards["snow"];
export type SeismicHazard = SiteHazards["seismic"];
export type SiteClass = SeismicHazard["siteClass"];
