import type { Certainty } from "@cornerway/schema";
import type { OpenWorking } from "./open-working.ts";
import type { Unit } from "./unit.ts";

/** Factored loads against φ times the strength, or service loads against the strength over Ω. */
export type DesignMethod = "LRFD" | "ASD";

/** Resistance factor and safety factor of one limit state. */
export type StrengthFactors = { readonly phi: number; readonly omega: number; readonly certainty: Certainty };

/** Records the available strength `symbol` from the nominal one: φ·R for LRFD, R/Ω for ASD. Returns it. */
export function availableStrength(
  working: OpenWorking,
  symbol: string,
  nominal: string,
  unit: Unit,
  factors: StrengthFactors,
  method: DesignMethod,
): number {
  if (method === "LRFD") {
    working.let("φ", factors.phi, "1", "resistance factor", factors.certainty);
    return working.compute(symbol, `φ*${nominal}`, unit);
  }
  working.let("Ω", factors.omega, "1", "safety factor", factors.certainty);
  return working.compute(symbol, `${nominal}/Ω`, unit);
}
