import { thinAxialWithBending } from "../codes/cold-formed/combined-forces.ts";
import { aisi, type ColdFormedBasis } from "../codes/cold-formed/cold-formed-basis.ts";
import { openWorking } from "../working/open-working.ts";
import type { Refusal } from "../working/resistance.ts";
import type { Working } from "../working/working.ts";
import { checkOf, type Check } from "./check.ts";
import type { CheckedElement } from "./limit-state.ts";
import type { PostBounds, PostStrengths } from "./post-bounds.ts";

export type PostElement = Extract<CheckedElement, "front corner post" | "door corner post">;

/** Forces in a post, N and N·mm, by the axes of its outline; compression positive, second-order effects in. */
export type PostDemand = {
  readonly axialN: number;
  readonly mxNmm: number;
  readonly myNmm: number;
  readonly shearXN: number;
  readonly shearYN: number;
  readonly torsionNmm: number;
};

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
  const lower = worse(
    againstBound(element, demand, bounds.lower, basis),
    sheared(element, demand, bounds.lower, basis),
  );
  const upper = worse(
    againstBound(element, demand, bounds.upper, basis),
    sheared(element, demand, bounds.upper, basis),
  );
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

/**
 * A post at its best: held along its length by whole sheet, and pressed by no less than its type was proved with. What is beyond
 * this is beyond every bound. Shear and torsion are left out: they have no upper bound.
 */
export function cornerPostAtBest(
  element: PostElement,
  demand: PostDemand,
  { upper }: PostBounds,
  proof: Working,
  basis: ColdFormedBasis,
): Check {
  const { compression } = upper;
  const isProved = demand.axialN >= 0 && !(compression.ok && compression.available >= proof.result.value);
  return isProved ? pressedAndBent(element, demand, proof, upper, basis) : againstBound(element, demand, upper, basis);
}

const worse = (one: Check, other: Check): Check => {
  if (!one.ok) return one;
  return !other.ok || other.utilisation > one.utilisation ? other : one;
};

/** Shear with torsion, as a plain sum of shares of shear yield: in a closed cell along the worse axis, else along both. */
function sheared(element: PostElement, demand: PostDemand, bound: PostStrengths, basis: ColdFormedBasis): Check {
  const subject = { element, limitState: "shear" } as const;
  const refuse = (why: Refusal): Check => ({ ok: false, ...subject, why });
  if (!bound.shearX.ok) return refuse(bound.shearX.why);
  if (!bound.shearY.ok) return refuse(bound.shearY.why);
  if (!bound.torsion.ok) return refuse(bound.torsion.why);
  const working = openWorking("Corner post in shear and torsion", aisi(basis, "G2.1, bounded"));
  working.let("V_x", Math.abs(demand.shearXN), "N", "required shear across", "derived", "analysis");
  working.let("V_y", Math.abs(demand.shearYN), "N", "required shear along", "derived", "analysis");
  working.let("T", Math.abs(demand.torsionNmm), "N·mm", "required torsion", "derived", "analysis");
  working.take("V_cx", bound.shearX.working);
  working.take("V_cy", bound.shearY.working);
  working.take("T_c", bound.torsion.working);
  working.compute("ratio", bound.closed ? "max(V_x/V_cx, V_y/V_cy) + T/T_c" : "V_x/V_cx + V_y/V_cy + T/T_c", "1");
  working.let("limit", 1, "1", "limit", "derived");
  return checkOf(subject, working.against("ratio", "limit"));
}

function againstBound(element: PostElement, demand: PostDemand, bound: PostStrengths, basis: ColdFormedBasis): Check {
  const axial = demand.axialN >= 0 ? bound.compression : bound.tension;
  return axial.ok
    ? pressedAndBent(element, demand, axial.working, bound, basis)
    : { ok: false, ...bent(element), why: axial.why };
}

const bent = (element: PostElement) => ({ element, limitState: "axial force with bending" }) as const;

/** `axial`: the strength in compression, or in tension. */
function pressedAndBent(
  element: PostElement,
  demand: PostDemand,
  axial: Working,
  { mx, my }: Pick<PostStrengths, "mx" | "my">,
  basis: ColdFormedBasis,
): Check {
  if (!mx.ok) return { ok: false, ...bent(element), why: mx.why };
  if (!my.ok) return { ok: false, ...bent(element), why: my.why };
  const available = { axial, mx: mx.working, my: my.working };
  return checkOf(bent(element), thinAxialWithBending(demand, available, basis));
}
