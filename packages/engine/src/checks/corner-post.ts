import type { Refusal, Resistance } from "../working/resistance.ts";
import type { Working } from "../working/working.ts";
import { demandAgainst, type Check } from "./check.ts";
import type { CheckedElement } from "./limit-state.ts";

/**
 * Where a post's load stands between its two bounds. `within lower`: carried even without sheet. `between`: carried only
 * with the help of the sheet, which nobody has measured. `beyond upper`: not carried. `proofRatio` is the load over the
 * ISO proof load, a cross-check and no strength.
 */
export type CornerPostFinding = {
  readonly standing: "within lower" | "between" | "beyond upper";
  readonly lower: Check;
  readonly upper: Check;
  readonly proofRatio: number;
  readonly proof: Working;
};

/** A post's axial load, N, against its bounds and beside its proof load. The reason comes back where a bound is refused. */
export function cornerPost(
  element: Extract<CheckedElement, "front corner post" | "door corner post">,
  axialN: number,
  bounds: { readonly lower: Resistance; readonly upper: Resistance; readonly proof: Working },
): CornerPostFinding | { readonly refused: Refusal } {
  const lower = demandAgainst({ element, limitState: "compression" }, axialN, bounds.lower);
  const upper = demandAgainst({ element, limitState: "compression" }, axialN, bounds.upper);
  if (!lower.ok) return { refused: lower.why };
  if (!upper.ok) return { refused: upper.why };
  const standing = lower.utilisation <= 1 ? "within lower" : upper.utilisation <= 1 ? "between" : "beyond upper";
  return { standing, lower, upper, proof: bounds.proof, proofRatio: Math.abs(axialN) / bounds.proof.result.value };
}
