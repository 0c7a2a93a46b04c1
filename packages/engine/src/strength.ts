import type { Scheme } from "@cornerway/schema";
import { checkBasisOf } from "./checks/check-basis.ts";
import { designBasisFor } from "./codes/loads/design-basis-for.ts";
import { strengthMemory } from "./strength/strength-memory.ts";
import { strengthOf, type Strength } from "./strength/strength-of.ts";

/**
 * Strength of a scheme on its design basis under its adopted edition: every part, its governing run and working, and a
 * verdict by unit with its reasons. Without hazards in the basis under gravity alone. N, mm, MPa. Screening; `assessStrength`
 * puts it into the marks.
 */
export function strength(scheme: Scheme): Strength {
  const { edition } = scheme.site;
  const basis = {
    loads: designBasisFor(edition),
    factored: checkBasisOf(edition, "LRFD"),
    allowable: checkBasisOf(edition, "ASD"),
  };
  return strengthOf(scheme, basis, strengthMemory());
}
