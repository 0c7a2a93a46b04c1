import { thinAxialWithBending } from "../codes/cold-formed/combined-forces.ts";
import type { ColdFormedBasis } from "../codes/cold-formed/cold-formed-basis.ts";
import type { Refusal } from "../working/resistance.ts";
import type { Working } from "../working/working.ts";
import { checkOf, type Check } from "./check.ts";
import type { CheckedElement } from "./limit-state.ts";
import type { PostBounds, PostStrengths } from "./post-bounds.ts";

export type PostElement = Extract<CheckedElement, "front corner post" | "door corner post">;

/** Forces in a post, N and N·mm about the axes of its outline; compression positive, second-order effects in. */
export type PostDemand = { readonly axialN: number; readonly mxNmm: number; readonly myNmm: number };

/**
 * Where a post's load stands between its two bounds. `within lower`: carried even without sheet. `between`: carried only
 * with the help of the sheet, which nobody has measured. `beyond upper`: not carried. `proofRatio` is the compression over
 * the ISO proof load, a cross-check and no strength.
 */
export type CornerPostFinding = {
  readonly standing: "within lower" | "between" | "beyond upper";
  readonly lower: Check;
  readonly upper: Check;
  readonly proofRatio: number;
  readonly proof: Working;
};

/** A post's forces against its bounds and beside its proof load; the reason comes back where a strength is refused. */
export function cornerPost(
  element: PostElement,
  demand: PostDemand,
  bounds: PostBounds,
  proof: Working,
  basis: ColdFormedBasis,
): CornerPostFinding | { readonly refused: Refusal } {
  const lower = againstBound(element, demand, bounds.lower, basis);
  const upper = againstBound(element, demand, bounds.upper, basis);
  if (!lower.ok) return { refused: lower.why };
  if (!upper.ok) return { refused: upper.why };
  const beyond = upper.utilisation > 1 ? "beyond upper" : "between";
  return {
    standing: lower.utilisation <= 1 ? "within lower" : beyond,
    lower,
    upper,
    proof,
    proofRatio: Math.max(demand.axialN, 0) / proof.result.value,
  };
}

function againstBound(element: PostElement, demand: PostDemand, bound: PostStrengths, basis: ColdFormedBasis): Check {
  const subject = { element, limitState: "axial force with bending" } as const;
  const refuse = (why: Refusal): Check => ({ ok: false, ...subject, why });
  const axial = demand.axialN >= 0 ? bound.compression : bound.tension;
  if (!axial.ok) return refuse(axial.why);
  if (!bound.mx.ok) return refuse(bound.mx.why);
  if (!bound.my.ok) return refuse(bound.my.why);
  const available = { axial: axial.working, mx: bound.mx.working, my: bound.my.working };
  return checkOf(subject, thinAxialWithBending(demand, available, basis));
}
