import { steelModulus } from "../../catalog/materials.ts";
import { openWorking } from "../../working/open-working.ts";
import type { Working } from "../../working/working.ts";
import { aisc, letModulus, type SteelBasis } from "./steel-basis.ts";

/** Beyond this share first-order forces enlarged by factors are no answer (AISC 360 C2.1, App. 8). */
export const mostAmplification = 1.5;

/** Share of the stiffness that direct analysis leaves to every member, τ_b = 1 (AISC 360 C2.3). */
export const stiffnessLeft = 0.8;

/** Between what holds it: inertia mm⁴, length mm; compression N at strength level, > 0. */
export type BowedMember = { readonly inertiaMm4: number; readonly lengthMm: number; readonly axialN: number };

/**
 * Compression against the one that enlarges a member's own bow by half: B₁ = 1/(1 − P_r/P_e1) with C_m = 1, so B₁ = 1.5 at a
 * third of the elastic force of the reduced stiffness.
 */
export function memberAmplification({ inertiaMm4, lengthMm, axialN }: BowedMember, basis: SteelBasis): Working {
  const working = openWorking("Bow of a member between what holds it", aisc(basis, "App. 8, 8.2.1; C2.3"));
  letModulus(working);
  working.let("I", inertiaMm4, "mm⁴", "inertia about the softer way", "derived");
  working.let("L", lengthMm, "mm", "length between what holds it", "derived");
  working.let("P_r", axialN, "N", "compression, strength level", "derived", "analysis");
  working.let("s", stiffnessLeft, "1", "share of the stiffness left", "memory", "C2.3, τ_b = 1");
  working.let("B_max", mostAmplification, "1", "most that factors may stand for", "memory", "C2.1");
  working.compute("P_e1", "s*π^2*E*I/L^2", "N", "App. 8, Eq. A-8-5");
  if (working.when("P_r", "<", "P_e1")) working.compute("B_1", "1/(1 - P_r/P_e1)", "1", "App. 8, Eq. A-8-3, C_m = 1");
  working.compute("P_max", "P_e1*(1 - 1/B_max)", "N", "B_1 at its most");
  return working.against("P_r", "P_max");
}

/** The compression at which a member enlarges its bow by half, N: plain numbers of `memberAmplification`. */
export const mostBowedN = ({ inertiaMm4, lengthMm }: Omit<BowedMember, "axialN">): number =>
  ((stiffnessLeft * (Math.PI * Math.PI) * steelModulus.valueMpa * inertiaMm4) / (lengthMm * lengthMm)) *
  (1 - 1 / mostAmplification);

/** A storey that leans: gravity load on it and shear on it N, how far the shear moves its head mm, its height mm. */
export type LeaningStorey = {
  readonly verticalN: number;
  readonly shearN: number;
  readonly driftMm: number;
  readonly heightMm: number;
};

/**
 * B₂ = 1/(1 − P_story/P_e story) with P_e story = R_M·H·L/Δ_H; R_M = 0.85, as if frames alone held the storey (AISC 360 App.
 * 8, 8.2.2). Stated as the load on the storey against the one at which B₂ is 1.5, with B₂ where the storey stands at all.
 */
export function storeyAmplification(storey: LeaningStorey, basis: SteelBasis): Working {
  const working = openWorking("Lean of a storey under what stands on it", aisc(basis, "App. 8, 8.2.2; C2.3"));
  working.let("P_story", storey.verticalN, "N", "gravity load on the storey, strength level", "derived", "analysis");
  working.let("H", storey.shearN, "N", "shear on the storey", "derived", "analysis");
  working.let("Δ", storey.driftMm, "mm", "what that shear moves its head, first order", "derived", "analysis");
  working.let("L", storey.heightMm, "mm", "height of the storey", "derived");
  working.let("s", stiffnessLeft, "1", "share of the stiffness left", "memory", "C2.3, τ_b = 1");
  working.let("R_M", 0.85, "1", "as if frames alone held it", "memory", "Eq. A-8-8");
  working.let("B_max", mostAmplification, "1", "most that factors may stand for", "memory", "C2.1");
  working.compute("P_e", "R_M*s*H*L/Δ", "N", "App. 8, Eq. A-8-7");
  if (working.when("P_story", "<", "P_e")) working.compute("B_2", "1/(1 - P_story/P_e)", "1", "App. 8, Eq. A-8-6");
  working.compute("P_max", "P_e*(1 - 1/B_max)", "N", "B_2 at its most");
  return working.against("P_story", "P_max");
}

/** B₂ of a storey by its utilisation in `storeyAmplification`: P/P_e is a third of it. */
export function amplificationOf({ utilisation = 0 }: Working): number {
  const ratio = utilisation * (1 - 1 / mostAmplification);
  return ratio < 1 ? 1 / (1 - ratio) : Infinity;
}
