import type { CladdingPart, CladdingPressure } from "../../../../loads/wind-pressures.ts";
import type { WindHazard } from "../../../../loads/site-hazards.ts";
import { openWorking } from "../../../../working/open-working.ts";
import type { Working } from "../../../../working/working.ts";
import { asce7, type Asce7Edition } from "../asce7-edition.ts";
import { fromPsf } from "../../us-units.ts";
import { claddingCoefficients } from "./cladding-coefficients.ts";
import { velocityPressure } from "./velocity-pressure.ts";

/**
 * Design pressures of a part of the skin, 30.3, buildings up to 60 ft. An overhang's underside takes the wall's
 * pressure. Exposure B never goes below 0.70 under 30 ft: 7-10 had that floor for components, kept here on the safe
 * side.
 */
export function claddingPressure(
  edition: Asce7Edition,
  wind: WindHazard,
  heightMm: number,
  internalCoefficient: number,
  part: CladdingPart,
): CladdingPressure {
  const floor = wind.exposure === "B" && heightMm < 30 * 304.8 ? 0.7 : 0;
  const q = velocityPressure(edition, wind, heightMm, floor);
  const { inward, outward } = claddingCoefficients(part);
  const towards = net(edition, `${part.surface}, ${part.zone}: pressure towards it`, q, inward, internalCoefficient);
  const away = net(edition, `${part.surface}, ${part.zone}: suction`, q, -outward, internalCoefficient);
  return { inwardPa: towards.result.value, outwardPa: away.result.value, workings: [towards, away] };
}

function net(edition: Asce7Edition, title: string, q: Working, coefficient: number, internal: number): Working {
  const w = openWorking(title, asce7(edition, "30.3"));
  w.take("q_h", q);
  w.let("GC_p", coefficient, "1", "external coefficient, size taken", "memory", "Figs. 30.3-1, 30.3-2A");
  w.let("GC_pi", internal, "1", "internal coefficient, of the sign that adds", "memory", "Table 26.13-1");
  w.let("p_min", fromPsf(16), "Pa", "least component pressure", "memory", "30.2.2");
  w.compute("p", "max(p_min, q_h * (GC_p + GC_pi))", "Pa", "30.3-1");
  return w.giving("p");
}
