import type { WindHazard } from "../../../../loads/site-hazards.ts";
import { openWorking } from "../../../../working/open-working.ts";
import type { Working } from "../../../../working/working.ts";
import { asce7, type Asce7Edition } from "../asce7-edition.ts";
import { exposureConstants, leastProfileHeightM } from "./exposure-constants.ts";

/**
 * Design velocity pressure at a height above ground, Pa, with the directionality factor: 7-16 has K_d in q_z (26.10-1),
 * 7-22 in the pressure; the product is the same. `leastExposureFactor` is the floor components have in exposure B.
 */
export function velocityPressure(
  edition: Asce7Edition,
  wind: WindHazard,
  heightMm: number,
  leastExposureFactor = 0,
): Working {
  const w = openWorking("Velocity pressure", asce7(edition, "26.10"));
  const { factor, alpha, gradientHeightM } = exposureConstants[edition][wind.exposure];
  w.let("V", wind.speedMs, "m/s", "basic wind speed", "common practice", "site value entered for the project");
  w.let("z", heightMm / 1000, "m", "height above ground", "derived");
  w.let("z_min", leastProfileHeightM, "m", "height below which the profile is constant", "memory", "Table 26.10-1");
  w.let("c", factor, "1", "profile factor", "memory", "Table 26.10-1");
  w.let("α", alpha, "1", `power law, exposure ${wind.exposure}`, "memory", "Table 26.11-1");
  w.let("z_g", gradientHeightM, "m", "gradient height", "memory", "Table 26.11-1");
  w.let("K_floor", leastExposureFactor, "1", "least exposure factor", "memory");
  w.let(
    "K_zt",
    wind.topographicFactor,
    "1",
    "topographic factor",
    "common practice",
    "site value entered for the project",
  );
  w.let("K_d", 0.85, "1", "directionality, buildings", "memory", "Table 26.6-1");
  w.let("z_e", wind.elevationM, "m", "ground elevation", "common practice", "site value entered for the project");
  w.compute("K_z", "max(K_floor, c * (max(z, z_min) / z_g)^(2 / α))", "1", "Table 26.10-1");
  w.compute("K_e", "exp(-0.000119 * z_e)", "1", "Table 26.9-1 note 2");
  w.compute("q", "0.613 * K_z * K_zt * K_d * K_e * V^2", "Pa", "26.10-1.si");
  return w.giving("q");
}
