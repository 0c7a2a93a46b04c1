import type { DesignMethod, StrengthFactors } from "../working/design-method.ts";
import { openWorking } from "../working/open-working.ts";
import type { Resistance } from "../working/resistance.ts";
import { stateResistance } from "../working/state-resistance.ts";
import type { Working } from "../working/working.ts";
import { demandAgainst, type Check } from "./check.ts";

/** How a force meets a fitting: pressed on another, pulled as in lifting, or pushed sideways as in racking. */
export type FittingForce = "compression" | "tension" | "shear";

/** Forces the ISO tests put on one top fitting, N: lifting by the top at 2R; the smaller of the two racking tests. */
const tested = {
  tension: { proofN: 150_000, test: "ISO 1496-1 test 2, lifting by the top, 2Rg/4" },
  shear: { proofN: 75_000, test: "ISO 1496-1 test 10, longitudinal rigidity, the smaller racking force" },
} as const;

const judgedFactors: StrengthFactors = { phi: 0.9, omega: 1.67, certainty: "common practice" };

const clause = {
  document: "ISO 1496-1",
  edition: "1990",
  place: "proof loads taken as nominal strength",
  certainty: "common practice",
} as const;

/** Strength of a corner fitting, N, bounded: its proof load as nominal strength. `stacking` is the post's proof load. */
export function fittingStrength(force: FittingForce, stacking: Working, method: DesignMethod): Resistance {
  const working = openWorking(`Corner fitting in ${force}, by its proof load`, clause);
  if (force === "compression") working.take("R_n", stacking);
  else working.let("R_n", tested[force].proofN, "N", "proof load", "memory", tested[force].test);
  working.note("A proof load on a new, whole container is no strength; φ 0.90 and Ω 1.67 on it are judgement.");
  return stateResistance(working, "R_n", "N", judgedFactors, method);
}

/** A force on a fitting, N, against its bounded strength. */
export const cornerFitting = (force: FittingForce, demandN: number, stacking: Working, method: DesignMethod): Check =>
  demandAgainst({ element: "corner fitting", limitState: force }, demandN, fittingStrength(force, stacking, method));
