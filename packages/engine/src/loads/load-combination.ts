import type { Clause } from "../working/working.ts";
import type { LoadSymbol } from "./load-symbol.ts";

/** At which level a combination is compared: with design strengths or with allowable ones. */
export type CombinationLevel = "strength" | "allowable";

/** One sum of factored actions, as a code prints it. */
export type LoadCombination = {
  readonly id: string;
  readonly level: CombinationLevel;
  readonly terms: readonly LoadTerm[];
  readonly clause: Clause;
};

export type LoadTerm = { readonly symbol: LoadSymbol; readonly factor: number };

/** How often the combination takes an action; 0 where it is left out. */
export const factorOf = ({ terms }: LoadCombination, symbol: LoadSymbol): number =>
  terms.reduce((sum, term) => (term.symbol === symbol ? sum + term.factor : sum), 0);

/** The sum as it is written on a page: `1.2D + 1.6L + 0.5S`. */
export const combinationText = ({ terms }: LoadCombination): string =>
  terms.map(({ symbol, factor }, at) => signed(factor, at === 0) + symbol).join("");

function signed(factor: number, first: boolean): string {
  const size = Math.abs(factor) === 1 ? "" : String(Math.abs(factor));
  if (first) return (factor < 0 ? "−" : "") + size;
  return (factor < 0 ? " − " : " + ") + size;
}
