import type { RiskCategory, SeismicHazard } from "../../../../loads/site-hazards.ts";
import type { SeismicDesign } from "../../../../loads/seismic-site.ts";
import { openWorking } from "../../../../working/open-working.ts";
import type { Working } from "../../../../working/working.ts";
import { asce7, type Asce7Edition } from "../asce7-edition.ts";
import { importanceFactors } from "../importance-factors.ts";
import { designCategory } from "./design-category.ts";
import { siteCoefficient } from "./site-coefficients.ts";

/**
 * S_DS, S_D1 and the design category, ch. 11. 7-22 has no site coefficients: S_MS and S_M1 come from its database.
 * Throws a RangeError where neither coefficient nor site value exists: hazards are accepted before they are used.
 */
export function seismicDesign(edition: Asce7Edition, hazard: SeismicHazard, riskCategory: RiskCategory): SeismicDesign {
  const short = designAcceleration(edition, hazard, "short");
  const long = designAcceleration(edition, hazard, "1 s");
  const sds = short.result.value;
  const sd1 = long.result.value;
  return {
    sds,
    sd1,
    s1: hazard.s1,
    longPeriodS: hazard.longPeriodS,
    importance: importanceFactors[riskCategory].seismic,
    category: designCategory({ sds, sd1, ss: hazard.ss, s1: hazard.s1 }, riskCategory),
    workings: [short, long],
  };
}

function designAcceleration(edition: Asce7Edition, hazard: SeismicHazard, period: "short" | "1 s"): Working {
  const short = period === "short";
  const w = openWorking(`Design acceleration, ${period}`, asce7(edition, "11.4"));
  const given = short ? hazard.siteValues?.sms : hazard.siteValues?.sm1;
  if (given === undefined) {
    w.let(
      "S",
      short ? hazard.ss : hazard.s1,
      "g",
      short ? "mapped S_S" : "mapped S_1",
      "common practice",
      "site value entered for the project",
    );
    const coefficient = coefficientOf(edition, hazard, short);
    w.let(
      "F",
      coefficient,
      "1",
      `site coefficient, class ${hazard.siteClass}`,
      "memory",
      short ? "Table 11.4-1" : "Table 11.4-2",
    );
    w.compute("S_M", "F * S", "g", short ? "11.4-1" : "11.4-2");
    if (studyAsked(hazard))
      w.note("11.4.8 asks for a site study for class D and S1 of 0.2 or more, unless its exception is taken.");
  } else {
    w.let("S_M", given, "g", "site value", "common practice", "site value entered for the project");
  }
  w.compute("S_D", "2 / 3 * S_M", "g", short ? "11.4-3" : "11.4-4");
  return w.giving("S_D");
}

function coefficientOf(edition: Asce7Edition, hazard: SeismicHazard, short: boolean): number {
  const table = short ? "Fa" : "Fv";
  const found =
    edition === "2016" ? siteCoefficient(table, hazard.siteClass, short ? hazard.ss : hazard.s1) : undefined;
  if (found === undefined)
    throw new RangeError(`no site coefficient for class ${hazard.siteClass} in ASCE 7-${edition}`);
  return found;
}

const studyAsked = ({ siteClass, s1 }: SeismicHazard): boolean =>
  (siteClass === "D" || siteClass === "default") && s1 >= 0.2;

/**
 * Whether neither site coefficients nor site values give the spectrum: 7-22 always needs values, 7-16 in poor ground.
 */
export const designSpectrumMissing = (
  edition: Asce7Edition,
  { siteValues, siteClass, ss, s1 }: SeismicHazard,
): boolean =>
  siteValues === undefined &&
  (edition === "2022" ||
    siteCoefficient("Fa", siteClass, ss) === undefined ||
    siteCoefficient("Fv", siteClass, s1) === undefined);
