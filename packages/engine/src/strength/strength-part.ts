import type { Steel } from "../catalog/materials.ts";
import type { Check } from "../checks/check.ts";
import type { CheckedElement, LimitState } from "../checks/limit-state.ts";
import type { CombinationLevel } from "../loads/load-combination.ts";
import type { SolvedRun } from "./solve-runs.ts";

/**
 * One part of the building that can fail, and how it is judged. Every kind of part declares one: `use` runs through all
 * runs on plain numbers, `decide` makes the working for the run that governs.
 */
export type StrengthPart = {
  /** The same in every set of assumptions: unit or pad, element, place. */
  readonly id: string;
  /** The unit it belongs to; for pads, the pad. */
  readonly ownerId: string;
  readonly element: CheckedElement;
  readonly place: string;
  /**
   * The part of which this one judges what is sure: only limit states that are wholly checked, or beyond both of its bounds, and
   * only in runs that stand as drawn. Told where it is beyond its strength.
   */
  readonly sureOf?: string;
  /** What its numbers rest on beside what every part's do; printed with its working. */
  readonly said?: string;
  /** Runs it is held against. */
  readonly level: CombinationLevel;
  /**
   * Greatest utilisation of any limit state in one run: infinite where a strength that acts is refused, 0 where nothing acts.
   * Where it is not above `above` it may be any value that is not either.
   */
  readonly use: (solved: SolvedRun, above?: number) => number;
  /** What decides in one run. */
  readonly decide: (solved: SolvedRun) => Screened;
};

/** What decides for a part in one run. `utilisation` is infinite where a strength that acts is refused. */
export type Screened = {
  readonly limitState: LimitState;
  readonly utilisation: number;
  /** Every limit state with its working, at the yield taken or at another. */
  readonly checks: (steel?: Steel) => readonly Check[];
  /** Utilisation of the upper of two bounds, where the part stands between them. */
  readonly upper?: number;
  /** Where one force alone presses or pulls, N. */
  readonly forceN?: number;
};
