import type { Scheme } from "@cornerway/schema";
import type { DesignMethod, StrengthFactors } from "../../working/design-method.ts";
import type { OpenWorking } from "../../working/open-working.ts";
import type { Clause } from "../../working/working.ts";
import { shearModulus, steelModulus, type Steel } from "../../catalog/materials.ts";

type BuildingCode = Scheme["site"]["edition"];
export type SteelEdition = "2016" | "2022";

/** What a check of structural steel is made by: the edition of AISC 360 and the method. */
export type SteelBasis = { readonly edition: SteelEdition; readonly method: DesignMethod };

/** The edition each building code adopts; pairings from memory. */
export const steelEditionOf: Readonly<Record<BuildingCode, SteelEdition>> = { "IBC 2021": "2016", "IBC 2024": "2022" };

/** A clause of AISC 360. All of them are stated here from memory. */
export const aisc = (basis: SteelBasis, place: string): Clause => ({
  document: "AISC 360",
  edition: basis.edition,
  place,
  certainty: "memory",
});

/** φ and Ω of most member limit states (AISC 360 E1, F1, G1). */
export const memberFactors: StrengthFactors = { phi: 0.9, omega: 1.67, certainty: "memory" };

/** φ and Ω of rupture, bearing and welds (AISC 360 J). */
export const ruptureFactors: StrengthFactors = { phi: 0.75, omega: 2, certainty: "memory" };

/** φ and Ω of yielding without loss of shape (AISC 360 G2.1(a), J4.2, J10.2). */
export const fullYieldFactors: StrengthFactors = { phi: 1, omega: 1.5, certainty: "memory" };

export function letYield(working: OpenWorking, steel: Steel): void {
  working.let("F_y", steel.fyMpa, "MPa", `yield stress, ${steel.name}`, steel.certainty, steel.source);
}

export function letModulus(working: OpenWorking): void {
  working.let("E", steelModulus.valueMpa, "MPa", "modulus of elasticity", steelModulus.certainty, steelModulus.source);
}

export function letShearModulus(working: OpenWorking): void {
  working.let("G", shearModulus.valueMpa, "MPa", "shear modulus", shearModulus.certainty, shearModulus.source);
}
