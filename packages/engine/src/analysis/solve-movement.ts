import { addElementForces } from "../elements/element.ts";
import { solveInPlace } from "../numerics/sparse-solve.ts";
import { roundingBound } from "../numerics/tolerances.ts";
import type { Prepared } from "./prepared.ts";

/** Loads on the freedoms (N, N·mm) and the given movement of held freedoms (mm, radians; not read elsewhere). */
export interface LoadVector {
  readonly forces: Float64Array;
  readonly settlement: Float64Array;
}

export interface Movement {
  readonly movement: Float64Array;
  /** Forces with which the elements answer, K·u, on every freedom. */
  readonly answered: Float64Array;
}

/**
 * Solves for several load vectors at once and refines each until its residual is rounding or no longer halves
 * (fixed-precision refinement: Skeel, Math. Comp. 35 (1980), from memory).
 */
export function solveMovements(prepared: Prepared, loads: readonly LoadVector[]): Movement[] {
  let results = loads.map((load) => start(prepared, load));
  let worst = results.map(() => Infinity);
  for (;;) {
    const next = refine(prepared, loads, results);
    const left = next.map((result, s) => unbalanced(prepared, result, loads[s]));
    results = next.map((result, s) => ((left[s] ?? 0) < (worst[s] ?? 0) ? result : (results[s] ?? result)));
    const settled = next.every((result, s) => isSettled(left[s] ?? 0, worst[s] ?? 0, result));
    if (settled) return results;
    worst = worst.map((before, s) => Math.min(before, left[s] ?? 0));
  }
}

/** Largest force that loads and elements leave unbalanced on a free freedom. */
export function unbalanced({ equationOf }: Prepared, { answered }: Movement, load: LoadVector | undefined): number {
  let most = 0;
  for (let f = 0; f < equationOf.length; f++) {
    if ((equationOf[f] ?? -1) >= 0) most = Math.max(most, Math.abs((load?.forces[f] ?? 0) - (answered[f] ?? 0)));
  }
  return most;
}

/** Operations behind one component of K·u: a node joins a few condensed containers of a hundred terms and more each. */
const ROUNDING = roundingBound(1024);

function isSettled(left: number, before: number, { answered }: Movement): boolean {
  if (!(left < before / 2)) return true;
  return left <= ROUNDING * answered.reduce((most, value) => Math.max(most, Math.abs(value)), 0);
}

function start(prepared: Prepared, { settlement }: LoadVector): Movement {
  const movement = settlement.map((value, f) => (prepared.held[f] ? value : 0));
  return { movement, answered: answer(prepared, movement) };
}

function refine(prepared: Prepared, loads: readonly LoadVector[], results: readonly Movement[]): Movement[] {
  const { equationOf, factor } = prepared;
  const count = loads.length;
  const x = new Float64Array(factor.tree.equations * count);
  results.forEach(({ answered }, s) => {
    equationOf.forEach((equation, f) => {
      if (equation >= 0) x[equation * count + s] = (loads[s]?.forces[f] ?? 0) - (answered[f] ?? 0);
    });
  });
  solveInPlace(factor, x, count);
  return results.map(({ movement }, s) => {
    const moved = movement.map(
      (value, f) => value + ((equationOf[f] ?? -1) >= 0 ? (x[(equationOf[f] ?? 0) * count + s] ?? 0) : 0),
    );
    return { movement: moved, answered: answer(prepared, moved) };
  });
}

function answer({ elements }: Prepared, movement: Float64Array): Float64Array {
  const answered = new Float64Array(movement.length);
  for (const element of elements) addElementForces(element, movement, answered);
  return answered;
}
