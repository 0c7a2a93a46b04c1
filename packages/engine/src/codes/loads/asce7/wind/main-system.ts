import type { WindHazard } from "../../../../loads/site-hazards.ts";
import type { MainSystemWind } from "../../../../loads/wind-pressures.ts";
import { windDirections, type Envelope, type WindShape } from "../../../../loads/wind-shape.ts";
import { openWorking } from "../../../../working/open-working.ts";
import { asce7, type Asce7Edition } from "../asce7-edition.ts";
import { fromPsf } from "../../us-units.ts";
import { directionalPressures } from "./directional-pressures.ts";
import { classifyEnclosure } from "./enclosure.ts";
import { velocityPressure } from "./velocity-pressure.ts";

/** Wind on the main system by the directional procedure for buildings of all heights (ch. 27 part 1). */
export function mainSystemWind(
  edition: Asce7Edition,
  wind: WindHazard,
  shape: WindShape,
  envelope: Envelope,
): MainSystemWind {
  const enclosure = classifyEnclosure(edition, envelope);
  const w = openWorking("Internal pressure, both signs", asce7(edition, "27.3.1"));
  w.take("q_h", velocityPressure(edition, wind, shape.heightMm));
  w.let("GC_pi", enclosure.coefficient, "1", `internal coefficient, ${enclosure.governing}`, "memory", "Table 26.13-1");
  w.compute("p_i", "q_h * GC_pi", "Pa");
  const internal = w.giving("p_i");
  // of many compartments one sets the pressure inside: only its directions are asked for
  let directions: MainSystemWind["directions"] | undefined;
  return {
    get directions() {
      return (directions ??= windDirections.map((direction) => directionalPressures(edition, wind, shape, direction)));
    },
    enclosure,
    internal,
    internalPa: internal.result.value,
    leastPa,
  };
}

/** 27.1.5: 16 psf on the projected wall, from memory. */
const leastPa = fromPsf(16);
