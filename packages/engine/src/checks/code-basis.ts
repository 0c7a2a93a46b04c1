import type { Scheme } from "@cornerway/schema";
import { coldFormedEditionOf, type ColdFormedBasis } from "../codes/cold-formed/cold-formed-basis.ts";
import { steelEditionOf, type SteelBasis } from "../codes/steel/steel-basis.ts";
import type { DesignMethod } from "../working/design-method.ts";

/** What steel is checked by: one closed set of editions, chosen by the adopted building code, and the method. */
export type CodeBasis = { readonly steel: SteelBasis; readonly thin: ColdFormedBasis };

export const codeBasis = (edition: Scheme["site"]["edition"], method: DesignMethod): CodeBasis => ({
  steel: { edition: steelEditionOf[edition], method },
  thin: { edition: coldFormedEditionOf[edition], method },
});
