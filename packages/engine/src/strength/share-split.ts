import type { AssumptionId } from "./assumption-sets.ts";
import type { Beside } from "./strength-share.ts";

/** What one helping thread does; the thread that asks does all else, and all that stands on the usual stiffness. */
export type HelpersShare = {
  /** Sets solved for governing runs; those `ahead` are condensed while the runs are still sought. */
  readonly sets: readonly AssumptionId[];
  readonly ahead: readonly AssumptionId[];
  readonly beside: readonly Beside[];
};

/**
 * Sets of the usual stiffness share one condensation, so one thread solves them: it is the longest share, and a third
 * helper gains nothing more. The first helper begins with the lean, which condenses the softest walls but looks into no
 * container: what is inside them is made ready ahead as well, where he would wait. Measured on nine
 * and on 64 containers.
 */
const splits: readonly (readonly HelpersShare[])[] = [
  [
    {
      sets: ["racking ×0.7", "diaphragms ×¼", "diaphragms ×4"],
      ahead: ["racking ×0.7", "diaphragms ×¼", "diaphragms ×4"],
      beside: ["lift", "erection", "floor"],
    },
  ],
  [
    { sets: ["racking ×0.7", "racking ×1.3"], ahead: ["racking ×0.7", "racking ×1.3"], beside: ["erection", "floor"] },
    { sets: ["diaphragms ×¼", "diaphragms ×4"], ahead: ["diaphragms ×¼", "diaphragms ×4"], beside: ["lift"] },
  ],
];

/** How many helpers a run has work for. */
export const mostHelpers = splits.length;

/** Fewer containers take less time than it takes to share them. */
export const leastShared = 4;

/** The shares of so many helpers; none beyond the most there is work for. */
export const splitOver = (helpers: number): readonly HelpersShare[] => splits[Math.min(helpers, mostHelpers) - 1] ?? [];
