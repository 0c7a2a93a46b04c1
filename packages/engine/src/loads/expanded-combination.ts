import { factorOf, type LoadCombination } from "./load-combination.ts";

/** What one combination multiplies in an analysis: Ev became dead load, Eh and Emh horizontal forces `E`. */
export type ExpandedCombination = {
  readonly combination: LoadCombination;
  readonly dead: number;
  readonly live: number;
  readonly roofLive: number;
  readonly snow: number;
  readonly rain: number;
  readonly wind: number;
  readonly earthquake: number;
  /** Imposed movements act in full beside every combination of gravity loads: common practice. */
  readonly movement: number;
};

export type EarthquakeFactors = {
  /** Part of the dead load the vertical shaking is worth. */
  readonly verticalShare: number;
  readonly redundancy: number;
  readonly overstrength: number;
};

export function expandCombination(combination: LoadCombination, earthquake: EarthquakeFactors): ExpandedCombination {
  const factor = (symbol: Parameters<typeof factorOf>[1]) => factorOf(combination, symbol);
  return {
    combination,
    dead: factor("D") + factor("Ev") * earthquake.verticalShare,
    live: factor("L"),
    roofLive: factor("Lr"),
    snow: factor("S"),
    rain: factor("R"),
    wind: factor("W"),
    earthquake: factor("Eh") * earthquake.redundancy + factor("Emh") * earthquake.overstrength,
    movement: factor("W") === 0 && factor("Eh") === 0 && factor("Emh") === 0 ? 1 : 0,
  };
}

/** Whether a combination has gravity loads only: the ones that take notional loads. */
export const gravityOnly = (combination: LoadCombination): boolean =>
  factorOf(combination, "W") === 0 && factorOf(combination, "Eh") === 0 && factorOf(combination, "Emh") === 0;
