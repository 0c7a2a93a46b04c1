import type { CodeEdition, Scheme } from "@cornerway/schema";
import { checkBasisOf } from "./checks/check-basis.ts";
import { designBasisFor } from "./codes/loads/design-basis-for.ts";
import type { StrengthBasis } from "./strength/strength-basis.ts";
import { strengthMemory } from "./strength/strength-memory.ts";
import { strengthOf, type Strength, type TellProgress } from "./strength/strength-of.ts";

/**
 * Strength of a scheme on its design basis under its adopted edition: every part, its governing run and working, and a
 * verdict by unit with its reasons. Without hazards in the basis under gravity alone. N, mm, MPa. Screening; `assessStrength`
 * puts it into the marks. `tell` is told after each set of assumptions how many are solved.
 */
export const strength = (scheme: Scheme, tell?: TellProgress): Strength =>
  strengthOf(scheme, strengthBasisFor(scheme.site.edition), strengthMemory(), tell);

/** The codes a scheme of this edition is judged by, at both levels; one for all schemes, since it knows members it was asked of. */
export function strengthBasisFor(edition: CodeEdition): StrengthBasis {
  const known = bases.get(edition) ?? {
    loads: designBasisFor(edition),
    factored: checkBasisOf(edition, "LRFD"),
    allowable: checkBasisOf(edition, "ASD"),
  };
  bases.set(edition, known);
  return known;
}

const bases = new Map<CodeEdition, StrengthBasis>();
