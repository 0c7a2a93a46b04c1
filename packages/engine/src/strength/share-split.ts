import type { AssumptionId } from "./assumption-sets.ts";
import type { Beside } from "./strength-share.ts";

/** What one helping thread does; the thread that asks does all else. */
export type HelpersShare = {
  /** Sets that are condensed at once, while the lean is found or the runs that govern are still sought. */
  readonly ahead: readonly AssumptionId[];
  /** Sets solved for every run. */
  readonly whole: readonly AssumptionId[];
  /** Done after those. */
  readonly beside: readonly Beside[];
  /** Sets solved for governing runs. */
  readonly sets: readonly AssumptionId[];
};

/**
 * Both sets solved for every run stand on the usual stiffness: condensing that in two threads costs less than one of them
 * doing both, which is half of all. Whoever solves the softest walls begins with the lean, which condenses them. Shares are as
 * even as measured on nine containers; a third helper gains nothing more.
 */
const splits: readonly (readonly HelpersShare[])[] = [
  [
    {
      ahead: ["locks at play"],
      whole: ["locks tied"],
      beside: ["lift", "deflection", "erection", "floor"],
      sets: ["racking ×0.7", "diaphragms ×¼"],
    },
  ],
  [
    {
      ahead: ["locks at play"],
      whole: ["locks tied"],
      beside: ["erection", "floor"],
      sets: ["diaphragms ×4"],
    },
    {
      ahead: ["racking ×0.7", "diaphragms ×¼"],
      whole: [],
      beside: ["lift", "deflection"],
      sets: ["racking ×0.7", "diaphragms ×¼"],
    },
  ],
];

/** How many helpers a run has work for. */
export const mostHelpers = splits.length;

/** Fewer containers take less time than it takes to share them. */
export const leastShared = 4;

/** The shares of so many helpers; none beyond the most there is work for. */
export const splitOver = (helpers: number): readonly HelpersShare[] => splits[Math.min(helpers, mostHelpers) - 1] ?? [];
