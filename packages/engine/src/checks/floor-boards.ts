import { gravity } from "../catalog/gravity.ts";
import { availableStrength, type DesignMethod, type StrengthFactors } from "../working/design-method.ts";
import { openWorking } from "../working/open-working.ts";
import { checkOf, type Check } from "./check.ts";

/** Factored load on the boards of a floor: even, Pa, and the heaviest at one place, N; `spanMm` from cross member to cross member. */
export type BoardLoad = {
  readonly pressurePa: number;
  readonly pointN: number;
  readonly meaning: string;
  readonly spanMm: number;
};

/** One wheel of the axle the ISO floor test puts on a floor: half of 7260 kg, 180 mm wide, on 142 cm²; ISO 1496-1 test 8, from memory. */
const WHEEL = { massKg: 3630, widthMm: 180, areaMm2: 14_200 };

const judgedFactors: StrengthFactors = { phi: 0.9, omega: 1.67, certainty: "common practice" };
const PA_PER_MPA = 1e6;

/**
 * Boards between two cross members as a simple span, bounded by what a wheel of the ISO floor test has bent new boards with. A
 * force at one place is taken to spread by half the span to either side: the same for the wheel and for the load.
 */
export function floorBoards({ pressurePa, pointN, meaning, spanMm }: BoardLoad, method: DesignMethod): Check {
  const working = openWorking("Floor boards between cross members", {
    document: "ISO 1496-1",
    edition: "1990",
    place: "test 8, floor, taken as nominal strength",
    certainty: "common practice",
  });
  working.let("w", pressurePa / PA_PER_MPA, "MPa", meaning, "derived", "analysis");
  working.let("P", pointN, "N", "heaviest at one place", "derived", "analysis");
  working.let("s", spanMm, "mm", "cross member to cross member", "common practice", "generic purchase specifications");
  working.compute("m", "w*s^2/8 + P*s/4/s", "N·mm/mm");
  working.let("m_w", WHEEL.massKg, "kg", "half an axle", "memory", "ISO 1496-1 test 8");
  working.let("b", WHEEL.widthMm, "mm", "wheel", "memory", "ISO 1496-1 test 8");
  working.let("A", WHEEL.areaMm2, "mm²", "its contact", "memory", "ISO 1496-1 test 8");
  working.let("g", gravity.value, "m/s²", "gravity", gravity.certainty, gravity.source);
  working.compute("P_w", "m_w*g", "N");
  working.compute("m_n", "P_w*(s/4 - A/b/8)/(b + s)", "N·mm/mm");
  availableStrength(working, "m_c", "m_n", "N·mm/mm", judgedFactors, method);
  working.note("A proof load on new boards is no strength; φ 0.90 and Ω 1.67 on it are judgement.");
  return checkOf({ element: "floor boards", limitState: "boards under load" }, working.against("m", "m_c"));
}
