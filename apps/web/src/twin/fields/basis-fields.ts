import {
  codeEditions,
  riskCategories,
  roofExposures,
  seismicSystems,
  siteClasses,
  soilClasses,
  thermals,
  windExposures,
  type CodeEdition,
  type DesignBasis,
  type SiteHazards,
} from "@cornerway/schema";
import type { PartField } from "../part/part-field.ts";
import { valueAt, withValueAt } from "../part/path.ts";
import { plain } from "./common.ts";
import { usUnits } from "./us-units.ts";

const choice = (path: string, label: string, values: readonly string[], group: string): PartField => ({
  path,
  label,
  as: "choice",
  options: plain(values),
  group,
});

type NumberField = Extract<PartField, { as: "number" }>;

const number = (path: string, label: string, unit: string, group: string, otherwise?: string): NumberField => ({
  path,
  label,
  as: "number",
  group,
  ...(unit === "" ? {} : { unit }),
  ...(otherwise === undefined ? {} : { otherwise }),
});

export const hazardFields: readonly PartField[] = [
  choice("hazards.riskCategory", "Risk category", riskCategories, "Hazards of the site"),
  choice("hazards.wind.edition", "Wind read for", codeEditions, "Wind"),
  choice("hazards.wind.exposure", "Exposure", windExposures, "Wind"),
  { ...number("hazards.wind.speedMs", "Basic speed", "m/s", "Wind"), us: usUnits.mph },
  { ...number("hazards.wind.elevationM", "Above the sea", "m", "Wind"), us: usUnits.ft },
  number("hazards.wind.topographicFactor", "Topography, Kzt", "", "Wind"),
  choice("hazards.snow.edition", "Snow read for", codeEditions, "Snow"),
  choice("hazards.snow.roofExposure", "Roof exposure", roofExposures, "Snow"),
  choice("hazards.snow.thermal", "Beneath the roof", thermals, "Snow"),
  { path: "hazards.snow.groundPa", label: "Ground snow", as: "quantity", quantity: "pressure", group: "Snow" },
  number("hazards.snow.winterWind", "Winter wind", "", "Snow", "none"),
  choice("hazards.seismic.edition", "Earthquake read for", codeEditions, "Earthquake"),
  choice("hazards.seismic.siteClass", "Site class", siteClasses, "Earthquake"),
  number("hazards.seismic.ss", "Ss", "g", "Earthquake"),
  number("hazards.seismic.s1", "S1", "g", "Earthquake"),
  number("hazards.seismic.longPeriodS", "Long period", "s", "Earthquake"),
  number("hazards.seismic.siteValues.sms", "SMS", "g", "Earthquake", "by class"),
  number("hazards.seismic.siteValues.sm1", "SM1", "g", "Earthquake", "by class"),
];

export const basisFields: readonly PartField[] = [
  choice("soil.class", "Soil", soilClasses, "Ground"),
  {
    path: "soil.report.bearingPa",
    label: "Bearing of report",
    as: "quantity",
    quantity: "pressure",
    otherwise: "presumptive",
    group: "Ground",
  },
  { path: "soil.report.source", label: "Report", as: "text", otherwise: "no report", group: "Ground" },
  { ...number("concreteMpa", "Concrete", "MPa", "Materials and tolerances"), us: usUnits.psi },
  { path: "levelErrorUm", label: "Level error", as: "small length", group: "Materials and tolerances" },
  { path: "settlementUm", label: "Settlement", as: "small length", group: "Materials and tolerances" },
  number("friction", "Friction", "", "Materials and tolerances"),
  number("lifting.factor", "Dynamic factor", "", "Lifting"),
  { path: "lifting.legMdeg", label: "Slope of legs", as: "quantity", quantity: "angle", group: "Lifting" },
  {
    path: "lifting.equalised",
    label: "Four legs",
    as: "yes or no",
    yes: "share alike",
    no: "two may carry",
    group: "Lifting",
  },
  choice("systems.x", "System, east–west", seismicSystems, "System against earthquakes"),
  choice("systems.y", "System, north–south", seismicSystems, "System against earthquakes"),
];

const rules = ["counted", "left out", "cap raised"] as const;

/** A rule as it was typed; undefined while it is none. */
export const readRule = (text: string) => rules.find((known) => known === text);

/** What the engineer decides of the sheet walls. */
export const sheetWallRule: PartField = choice("sheetWalls.rule", "Sheet walls", rules, "Sheet walls");

/** What each rule of the sheet walls asks for besides. */
export const sheetWallFields = (rule: DesignBasis["sheetWalls"]["rule"]): readonly PartField[] => {
  const reason: PartField = { path: "sheetWalls.reason", label: "Why", as: "text", long: true, group: "Sheet walls" };
  if (rule === "counted") return [];
  if (rule === "left out") return [reason];
  return [
    { path: "sheetWalls.capNPerM", label: "Cap", as: "quantity", quantity: "line load", group: "Sheet walls" },
    reason,
  ];
};

/** Drops what the chosen rule of the sheet walls does not ask for. */
export function settleSheetWalls(basis: object): object {
  const rule = valueAt(basis, "sheetWalls.rule");
  const withoutCap = rule === "cap raised" ? basis : withValueAt(basis, "sheetWalls.capNPerM", undefined);
  return rule === "counted" ? withValueAt(withoutCap, "sheetWalls.reason", undefined) : withoutCap;
}

/** Hazards to begin from, all for one edition: the least a site can be asked for, to be replaced by what was read. */
export const firstHazards = (edition: CodeEdition): SiteHazards => ({
  riskCategory: "II",
  wind: { edition, speedMs: 42.5, exposure: "C", elevationM: 0, topographicFactor: 1 },
  snow: { edition, groundPa: 0, roofExposure: "partially exposed", thermal: "heated" },
  seismic: { edition, ss: 0, s1: 0, siteClass: "default", longPeriodS: 8 },
});
