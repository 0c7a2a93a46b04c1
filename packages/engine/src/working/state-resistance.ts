import { availableStrength, type DesignMethod, type StrengthFactors } from "./design-method.ts";
import type { OpenWorking } from "./open-working.ts";
import type { Resistance } from "./resistance.ts";
import type { Unit } from "./unit.ts";

/** Ends a working with its available strength: `P_n` gives `P_c`, `M_n` gives `M_c`. */
export function stateResistance(
  working: OpenWorking,
  nominal: string,
  unit: Unit,
  factors: StrengthFactors,
  method: DesignMethod,
): Resistance {
  const symbol = nominal.replace("_n", "_c");
  const available = availableStrength(working, symbol, nominal, unit, factors, method);
  return { ok: true, nominal: working.value(nominal), available, working: working.giving(symbol) };
}
