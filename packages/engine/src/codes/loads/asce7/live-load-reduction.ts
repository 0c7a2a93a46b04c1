import { openWorking } from "../../../working/open-working.ts";
import type { Working } from "../../../working/working.ts";
import { fromPsf } from "../us-units.ts";
import { asce7, type Asce7Edition } from "./asce7-edition.ts";

export type ReductionRequest = {
  readonly pressurePa: number;
  readonly areaM2: number;
  /** Live load element factor, Table 4.7-1: 4 inner columns, 2 inner beams and edge beams, 1 the rest. */
  readonly elementFactor: 1 | 2 | 3 | 4;
  readonly floors: number;
};

/** Reduced floor live load, 4.7.2. Areas under 400 ft² (with the factor) are not reduced. */
export function reducedLiveLoad(edition: Asce7Edition, request: ReductionRequest): Working {
  const w = openWorking("Reduced live load", asce7(edition, "4.7.2"));
  w.let("L_o", request.pressurePa, "Pa", "unreduced live load", "memory", "Table 4.3-1");
  w.let("K_LL", request.elementFactor, "1", "element factor", "memory", "Table 4.7-1");
  w.let("A_T", request.areaM2, "m²", "tributary area", "derived");
  w.let("A_min", 400 * ft2, "m²", "area from which it is reduced", "memory", "4.7.2");
  w.let("A_1", ft2, "m²", "1 ft²", "published", "NIST SP 811");
  w.let("f_min", request.floors > 1 ? 0.4 : 0.5, "1", "least share", "memory", "4.7.2");
  if (w.when("K_LL * A_T", "<", "A_min")) w.compute("L", "L_o", "Pa");
  else w.compute("L", "L_o * min(max(0.25 + 15 / sqrt(K_LL * A_T / A_1), f_min), 1)", "Pa", "4.7-1");
  return w.giving("L");
}

/** Roof live load of a flat roof, 4.8.2: 20 psf, less with the area carried, never under 12. */
export function roofLiveLoad(edition: Asce7Edition, areaM2: number): Working {
  const w = openWorking("Roof live load", asce7(edition, "4.8.2"));
  w.let("L_o", fromPsf(20), "Pa", "ordinary flat roof", "memory", "Table 4.3-1");
  w.let("L_min", fromPsf(12), "Pa", "least", "memory", "4.8.2");
  w.let("A_T", areaM2, "m²", "tributary area", "derived");
  w.let("A_1", ft2, "m²", "1 ft²", "published", "NIST SP 811");
  w.compute("R_1", "min(max(1.2 - 0.001 * A_T / A_1, 0.6), 1)", "1", "4.8-1");
  w.compute("L_r", "max(L_o * R_1, L_min)", "Pa");
  return w.giving("L_r");
}

const ft2 = 0.3048 * 0.3048;
