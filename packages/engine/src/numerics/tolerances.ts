/** Half the distance from 1 to the next double: the relative error of one rounded operation (IEEE 754). */
export const UNIT_ROUNDOFF = 1.1102230246251565e-16;

/**
 * Relative error that `operations` rounded operations in a row can leave, γₙ = n·u/(1 − n·u).
 * Source: Higham, Accuracy and Stability of Numerical Algorithms, lemma 3.1 (from memory).
 */
export function roundingBound(operations: number): number {
  return (operations * UNIT_ROUNDOFF) / (1 - operations * UNIT_ROUNDOFF);
}

/**
 * A pivot smaller than this part of its own diagonal is looked at again as a possible mechanism. Only a cost setting:
 * the decision is made by the residual of the movement found (see analysis/mechanism.ts), never by this number.
 */
export const SUSPECT_PIVOT_RATIO = 1.5e-8; // √u

/**
 * What must be left of a pivot, relative to the terms it is summed from, for a factorisation to be updated: six digits may
 * cancel, which refinement makes good. Only a cost setting: beyond it the state is factorised afresh.
 */
export const LEAST_LEFT_BY_UPDATE = 1e-6;

/** Corners of a panel may miss a rectangle by this part of its diagonal: drawn coordinates are rounded. */
export const RECTANGLE_TOLERANCE = 1e-4;

/**
 * Accuracy claimed for solved values, relative to the largest value of the same kind in the same solution. A contact that
 * pulls, or overlaps, by less than this cannot be told from one that just touches.
 */
export const SOLUTION_ACCURACY = 1e-9;

/** What is left of a sum by rounding alone, relative to the sum: below it a residual is no residual. */
export const SUM_ROUNDING = 1e-9;

/** A line in plan that runs less than this, mm, across a slab runs along it: a millionth of the micrometre that is stored. */
export const STILL_MM = 1e-9;

/** Determinant of a fitted plane over the square of its trace below which the places lie on one line. */
export const ONE_LINE = 1e-12;

/** Armijo's share of the promised gain that a shortened step must bring. Source: Nocedal & Wright, ch. 3 (from memory). */
export const LEAST_SHARE_OF_GAIN = 1e-4;
