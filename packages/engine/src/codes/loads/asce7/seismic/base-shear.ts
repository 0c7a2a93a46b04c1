import type { PeriodKind } from "../../../../loads/seismic-force.ts";
import type { SeismicDesign } from "../../../../loads/seismic-site.ts";
import { openWorking } from "../../../../working/open-working.ts";
import type { Working } from "../../../../working/working.ts";
import { asce7, type Asce7Edition } from "../asce7-edition.ts";
import { interpolate, type Point } from "../../interpolate.ts";

/** Period, 12.8.2: a computed one is used up to C_u·T_a; without one T = T_a. */
export function designPeriod(
  edition: Asce7Edition,
  design: SeismicDesign,
  kind: PeriodKind,
  heightMm: number,
  computedS?: number,
): Working {
  const w = openWorking("Fundamental period", asce7(edition, "12.8.2"));
  const [ct, x] = periodConstants[kind];
  w.let("h_n", heightMm / 1000, "m", "structural height", "derived");
  w.let("C_t", ct, "1", `${kind}, heights in feet`, "memory", "Table 12.8-2");
  w.let("x", x, "1", kind, "memory", "Table 12.8-2");
  w.compute("T_a", "C_t * (h_n / 0.3048)^x", "s", "12.8-7");
  if (computedS === undefined) return w.giving("T_a");
  w.let("C_u", interpolate(upperLimits, design.sd1), "1", "upper limit", "memory", "Table 12.8-1");
  w.let("T_c", computedS, "s", "computed period", "derived");
  w.compute("T", "min(T_c, C_u * T_a)", "s");
  return w.giving("T");
}

const periodConstants: Readonly<Record<PeriodKind, readonly [number, number]>> = {
  "steel moment frame": [0.028, 0.8],
  "eccentric or buckling-restrained braces": [0.03, 0.75],
  other: [0.02, 0.75],
};

const upperLimits: readonly Point[] = [
  [0.1, 1.7],
  [0.15, 1.6],
  [0.2, 1.5],
  [0.3, 1.4],
];

/** Seismic response coefficient C_s, 12.8.1.1, with its upper and lower limits. In category A 0.01 (11.7). */
export function responseCoefficient(edition: Asce7Edition, design: SeismicDesign, r: number, period: Working): Working {
  const w = openWorking("Seismic response coefficient", asce7(edition, "12.8.1.1"));
  if (design.category === "A") {
    w.let("C_s", 0.01, "1", "category A", "memory", "11.7, 1.4.2");
    return w.giving("C_s");
  }
  const [short, long] = design.workings;
  if (short === undefined || long === undefined) throw new RangeError("a seismic design states both accelerations");
  w.take("S_DS", short);
  w.take("S_D1", long);
  w.let("S_1", design.s1, "g", "mapped acceleration at 1 s", "common practice", "site value entered for the project");
  w.let(
    "T_L",
    design.longPeriodS,
    "s",
    "long-period transition",
    "common practice",
    "site value entered for the project",
  );
  w.let("R", r, "1", "response modification", "memory", "Table 12.2-1");
  w.let("I_e", design.importance, "1", "importance", "memory", "Table 1.5-2");
  w.take("T", period);
  w.compute("C_1", "S_DS / (R / I_e)", "1", "12.8-2");
  if (w.when("T", "<=", "T_L")) w.compute("C_2", "S_D1 / (T * R / I_e)", "1", "12.8-3");
  else w.compute("C_2", "S_D1 * T_L / (T^2 * R / I_e)", "1", "12.8-4");
  w.compute("C_3", "max(0.044 * S_DS * I_e, 0.01)", "1", "12.8-5");
  if (w.when("S_1", ">=", "0.6")) w.compute("C_4", "0.5 * S_1 / (R / I_e)", "1", "12.8-6");
  else w.compute("C_4", "0", "1");
  w.compute("C_s", "max(min(C_1, C_2), C_3, C_4)", "1");
  return w.giving("C_s");
}
