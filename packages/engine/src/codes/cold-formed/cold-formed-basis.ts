import type { Scheme } from "@cornerway/schema";
import type { DesignMethod, StrengthFactors } from "../../working/design-method.ts";
import type { Clause } from "../../working/working.ts";

type BuildingCode = Scheme["site"]["edition"];
export type ColdFormedEdition = "2016" | "2016 with supplements";

/** What a check of cold-formed steel is made by: the edition of AISI S100 and the method. */
export type ColdFormedBasis = { readonly edition: ColdFormedEdition; readonly method: DesignMethod };

/** The edition each building code adopts; pairings from memory. */
export const coldFormedEditionOf: Readonly<Record<BuildingCode, ColdFormedEdition>> = {
  "IBC 2021": "2016",
  "IBC 2024": "2016 with supplements",
};

/** A clause of AISI S100. All of them are stated here from memory. */
export const aisi = (basis: ColdFormedBasis, place: string): Clause => ({
  document: "AISI S100",
  edition: basis.edition,
  place,
  certainty: "memory",
});

/** φ and Ω of AISI S100 E1, F1, G1, H3. */
export const compressionFactors: StrengthFactors = { phi: 0.85, omega: 1.8, certainty: "memory" };
export const flexureFactors: StrengthFactors = { phi: 0.9, omega: 1.67, certainty: "memory" };
export const shearFactors: StrengthFactors = { phi: 0.95, omega: 1.6, certainty: "memory" };
