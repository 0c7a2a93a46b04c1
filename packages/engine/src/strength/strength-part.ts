import type { Steel } from "../catalog/materials.ts";
import type { Check } from "../checks/check.ts";
import type { CheckedElement, LimitState } from "../checks/limit-state.ts";
import type { CombinationLevel } from "../loads/load-combination.ts";
import type { SolvedRun } from "./solve-runs.ts";

/**
 * One part of the building that can fail, and how it is judged. Every kind of part declares one: screening runs through
 * all runs on plain numbers, the working is made only for the run that governs.
 */
export type StrengthPart = {
  /** The same in every set of assumptions: unit or pad, element, place. */
  readonly id: string;
  /** The unit it belongs to; for pads, the pad. */
  readonly ownerId: string;
  readonly element: CheckedElement;
  readonly place: string;
  /** Runs it is held against. */
  readonly level: CombinationLevel;
  readonly screen: (solved: SolvedRun) => Screened | undefined;
};

/** What decides for a part in one run. `utilisation` is infinite where a strength that acts is refused. */
export type Screened = {
  readonly limitState: LimitState;
  readonly utilisation: number;
  /** Every limit state with its working, at the yield taken or at another. */
  readonly checks: (steel?: Steel) => readonly Check[];
  /** Utilisation of the upper of two bounds, where the part stands between them. */
  readonly upper?: number;
};

/** The greater of two; the first where they are equal. */
export const worseOf = (one: Screened | undefined, other: Screened): Screened =>
  one === undefined || other.utilisation > one.utilisation ? other : one;
