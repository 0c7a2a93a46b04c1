import type { RiskCategory, SnowHazard, WindExposure } from "../../../../loads/site-hazards.ts";
import type { RoofSnow } from "../../../../loads/snow-drift.ts";
import { openWorking } from "../../../../working/open-working.ts";
import type { Working } from "../../../../working/working.ts";
import { fromPsf } from "../../us-units.ts";
import { asce7, type Asce7Edition } from "../asce7-edition.ts";
import { importanceFactors } from "../importance-factors.ts";
import { exposureFactors, thermalFactors } from "./roof-factors.ts";

/** Snow on a flat roof, 7.3 and 7.10: what is balanced, and the uniform case with the least load and rain on snow. */
export function flatRoofSnow(
  edition: Asce7Edition,
  snow: SnowHazard,
  terrain: WindExposure,
  riskCategory: RiskCategory,
): RoofSnow {
  const balanced = balancedSnow(edition, snow, terrain, riskCategory);
  return { balanced, uniform: uniformSnow(edition, snow, riskCategory, balanced) };
}

function balancedSnow(edition: Asce7Edition, snow: SnowHazard, terrain: WindExposure, risk: RiskCategory): Working {
  const w = openWorking("Balanced snow on a flat roof", asce7(edition, "7.3"));
  w.let("p_g", snow.groundPa, "Pa", "ground snow", "common practice", "site value entered for the project");
  w.let(
    "C_e",
    exposureFactors[snow.roofExposure][terrain],
    "1",
    `${snow.roofExposure}, terrain ${terrain}`,
    "memory",
    "Table 7.3-1",
  );
  w.let("C_t", thermalFactors[edition][snow.thermal], "1", snow.thermal, "memory", "Tables 7.3-2, 7.3-3");
  w.let(
    "I_s",
    edition === "2016" ? importanceFactors[risk].snow : 1,
    "1",
    `risk category ${risk}`,
    "memory",
    "Table 1.5-2",
  );
  if (edition === "2022")
    w.note("Ground snow is mapped for each risk category; C_t of a heated roof is the largest of its table.");
  w.compute("p_f", "0.7 * C_e * C_t * I_s * p_g", "Pa", "7.3-1");
  return w.giving("p_f");
}

/** Upper end of the least load of low roofs, 7.3.4, psf: 20·I_s in 7-16, by risk category in 7-22. From memory. */
const leastUpTo: Readonly<Record<RiskCategory, number>> = { I: 25, II: 30, III: 35, IV: 40 };

function uniformSnow(edition: Asce7Edition, snow: SnowHazard, risk: RiskCategory, balanced: Working): Working {
  const importance = edition === "2016" ? importanceFactors[risk].snow : 1;
  const upToPa = fromPsf(edition === "2016" ? 20 : leastUpTo[risk]);
  const rainPa = snow.groundPa > 0 && snow.groundPa <= upToPa ? fromPsf(edition === "2016" ? 5 : 8) : 0;
  const w = openWorking("Uniform snow on a flat roof", asce7(edition, "7.3.4, 7.10"));
  w.take("p_f", balanced);
  w.let("p_g", snow.groundPa, "Pa", "ground snow", "common practice", "site value entered for the project");
  w.let("p_up", upToPa, "Pa", "ground snow up to which the least load grows", "memory", "7.3.4");
  w.let("I_s", importance, "1", `risk category ${risk}`, "memory", "Table 1.5-2");
  w.let("p_r", rainPa, "Pa", "rain on snow, flat roofs where little snow lies", "memory", "7.10");
  w.compute("p_m", "I_s * min(p_g, p_up)", "Pa", "7.3.4");
  w.compute("p_u", "max(p_f + p_r, p_m)", "Pa");
  return w.giving("p_u");
}
