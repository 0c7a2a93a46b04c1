import type { RiskCategory, SnowHazard } from "../../../../loads/site-hazards.ts";
import type { RoofStep, SnowDrift } from "../../../../loads/snow-drift.ts";
import { openWorking, type OpenWorking } from "../../../../working/open-working.ts";
import type { Working } from "../../../../working/working.ts";
import { kgPerM3PerPcf } from "../../us-units.ts";
import { asce7, type Asce7Edition } from "../asce7-edition.ts";
import { importanceFactors } from "../importance-factors.ts";

/**
 * Drift on the lower of two roofs, 7.7.1; undefined where the text needs none. Leeward and windward drifts are both
 * worked, the higher one is returned. Formulas are the text's, in feet and psf, with the conversion written in them.
 */
export function snowDrift(
  edition: Asce7Edition,
  snow: SnowHazard,
  riskCategory: RiskCategory,
  balanced: Working,
  step: RoofStep,
): SnowDrift | undefined {
  if (snow.groundPa === 0) return undefined;
  const clear = clearHeight(edition, snow, balanced, step);
  if (!clear.needed) return undefined;
  const leeward = driftHeight(edition, snow, riskCategory, step.upperLengthMm, "leeward");
  const windward = driftHeight(edition, snow, riskCategory, step.lowerLengthMm, "windward");
  const from = windward.result.value > leeward.result.value ? "windward" : "leeward";
  if (Math.max(windward.result.value, leeward.result.value) <= 0) return undefined;
  const shape = driftShape(edition, snow, from === "windward" ? windward : leeward, clear.working);
  return { ...shape, from, workings: [clear.working, leeward, windward, ...shape.workings] };
}

const pcfToKnPerM3 = (kgPerM3PerPcf * 9.80665) / 1000;

/** 7.7-1: 0.13p_g + 14 ≤ 30 pcf. */
function letDensity(w: OpenWorking, snow: SnowHazard): void {
  w.let("p_g", snow.groundPa, "Pa", "ground snow", "common practice", "site value entered for the project");
  w.let("u_γ", pcfToKnPerM3, "kN/m³", "1 lb/ft³", "published", "NIST SP 811");
  w.let("u_p", 47.88025898, "Pa", "1 lb/ft²", "published", "NIST SP 811");
  w.compute("γ", "min(0.13 * p_g / u_p + 14, 30) * u_γ", "kN/m³", "7.7-1");
}

function clearHeight(edition: Asce7Edition, snow: SnowHazard, balanced: Working, step: RoofStep) {
  const w = openWorking("Clear height above the balanced snow", asce7(edition, "7.7.1"));
  letDensity(w, snow);
  w.take("p_s", balanced);
  w.let("h", step.stepMm / 1000, "m", "step between the roofs", "derived");
  w.compute("h_b", "p_s / (1000 * γ)", "m");
  w.compute("h_c", "h - h_b", "m");
  const needed = w.when("h_c", ">=", "0.2 * h_b", "no drift below");
  return { needed, working: w.giving("h_c") };
}

function driftHeight(
  edition: Asce7Edition,
  snow: SnowHazard,
  riskCategory: RiskCategory,
  fetchMm: number,
  from: "leeward" | "windward",
): Working {
  const w = openWorking(`Height of the ${from} drift`, asce7(edition, "7.6.1, 7.7.1"));
  letDensity(w, snow);
  w.let("l_u", fetchMm / 1000, "m", `roof that feeds the ${from} drift`, "derived");
  w.let("s", from === "windward" ? 0.75 : 1, "1", "share taken", "memory", "7.7.1");
  if (edition === "2016") height2016(w, riskCategory);
  else height2022(w, snow);
  w.compute("h_d", "s * max(h_1, 0)", "m");
  return w.giving("h_d");
}

function height2016(w: OpenWorking, riskCategory: RiskCategory): void {
  w.let("I_s", importanceFactors[riskCategory].snow, "1", `risk category ${riskCategory}`, "memory", "Table 1.5-2");
  w.let("l_min", 20 * 0.3048, "m", "shortest fetch of the chart", "memory", "Fig. 7.6-1");
  w.compute(
    "h_1",
    "0.3048 * sqrt(I_s) * (0.43 * (max(l_u, l_min) / 0.3048)^(1 / 3) * (p_g / u_p + 10)^(1 / 4) - 1.5)",
    "m",
    "Fig. 7.6-1",
  );
}

function height2022(w: OpenWorking, snow: SnowHazard): void {
  if (snow.winterWind === undefined) throw new RangeError("snow drift of ASCE 7-22 needs the winter wind parameter");
  w.let("W_2", snow.winterWind, "1", "winter wind parameter", "common practice", "site value entered for the project");
  w.compute("h_1", "0.3048 * 1.5 * sqrt((p_g / u_p)^0.74 * (l_u / 0.3048)^0.70 * W_2^1.7 / (γ / u_γ))", "m", "7.6-1");
}

/** A drift that would rise above the upper roof is cut at it and made longer, to 8 clear heights at most. */
function driftShape(edition: Asce7Edition, snow: SnowHazard, height: Working, clear: Working): Omit<SnowDrift, "from"> {
  const w = openWorking("Width of the drift", asce7(edition, "7.7.1"));
  const hd = w.take("h_d", height);
  const hc = w.take("h_c", clear);
  w.when("h_d", "<=", "h_c");
  if (hd <= hc) w.compute("w", "4 * h_d", "m");
  else w.compute("w", "min(4 * h_d^2 / h_c, 8 * h_c)", "m");
  const width = w.giving("w");
  const load = openWorking("Load of the drift at the step", asce7(edition, "7.7.1"));
  letDensity(load, snow);
  load.take("h_d", height);
  load.take("h_c", clear);
  load.compute("p_d", "1000 * γ * min(h_d, h_c)", "Pa");
  const peak = load.giving("p_d");
  return {
    peakPa: peak.result.value,
    widthMm: width.result.value * 1000,
    heightMm: Math.min(hd, hc) * 1000,
    workings: [width, peak],
  };
}
