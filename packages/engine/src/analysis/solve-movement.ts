import { addElementForcesOfSides } from "../elements/element.ts";
import { solveBordered } from "../numerics/bordered-factor.ts";
import { Scratch } from "../numerics/scratch.ts";
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
 * (fixed-precision refinement: Skeel, Math. Comp. 35 (1980), from memory). Each gets the bits it would get by itself.
 * `near` are movements to begin from; one that is in balance is the answer.
 */
export function solveMovements(
  prepared: Prepared,
  loads: readonly LoadVector[],
  near: readonly (Float64Array | null)[] = [],
): Movement[] {
  const parts = Array.from({ length: Math.ceil(loads.length / AT_ONCE) }, (_, n) => n * AT_ONCE);
  return parts.flatMap((from) =>
    solveSome(prepared, loads.slice(from, from + AT_ONCE), near.slice(from, from + AT_ONCE)),
  );
}

/** So many load vectors stay near the processor (measured). */
const AT_ONCE = 32;

function solveSome(
  prepared: Prepared,
  loads: readonly LoadVector[],
  near: readonly (Float64Array | null)[],
): Movement[] {
  const begun = start(prepared, loads, near);
  if (near.every((given) => given === null)) return refinedFrom(prepared, loads, begun);
  const open = loads.flatMap((load, s) =>
    near[s] && isInBalance(prepared, begun.answered, load, s, loads.length) ? [] : [s],
  );
  const answers = loads.map((_, s) => sideOf(begun, s, loads.length));
  if (open.length === 0) return answers;
  const refined = refinedFrom(
    prepared,
    open.map((s) => loads[s] ?? missing()),
    open.length === loads.length ? begun : blockOf(open.map((s) => answers[s] ?? missing())),
  );
  open.forEach((s, n) => (answers[s] = refined[n] ?? missing()));
  return answers;
}

/** A load vector whose residual has not come to rest yet. */
interface Going {
  readonly at: number;
  readonly load: LoadVector;
  /** Its residual so far. */
  readonly worst: number;
}

/** Those at rest are not solved for again while others still go on. */
function refinedFrom(prepared: Prepared, loads: readonly LoadVector[], begun: Movement): Movement[] {
  const ends: Movement[] = [];
  let going = loads.map((load, at): Going => ({ load, at, worst: Infinity }));
  let results = begun;
  for (;;) {
    const count = going.length;
    const next = refine(
      prepared,
      going.map(({ load }) => load),
      results,
    );
    const on: { readonly one: Going; readonly side: number }[] = [];
    going.forEach(({ at, load, worst }, s) => {
      const left = unbalancedSide(prepared, next.answered, load, s, count);
      if (isSettled(left, worst, next.answered, s, count)) ends[at] = sideOf(left < worst ? next : results, s, count);
      else on.push({ one: { at, load, worst: left }, side: s });
    });
    if (on.length === 0) return ends;
    going = on.map(({ one }) => one);
    results = on.length === count ? next : blockOf(on.map(({ side }) => sideOf(next, side, count)));
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
/** A sum of a few dozen solutions, each with its own rounding. */
const ROUNDING_OF_SUM = roundingBound(32 * 1024);

function isSettled(left: number, before: number, answered: Float64Array, side: number, count: number): boolean {
  return !(left < before / 2) || left <= ROUNDING * largestOf(answered, side, count);
}

function isInBalance(
  prepared: Prepared,
  answered: Float64Array,
  load: LoadVector,
  side: number,
  count: number,
): boolean {
  return unbalancedSide(prepared, answered, load, side, count) <= ROUNDING_OF_SUM * largestOf(answered, side, count);
}

function largestOf(values: Float64Array, side: number, count: number): number {
  let most = 0;
  for (let at = side; at < values.length; at += count) most = Math.max(most, Math.abs(values[at] ?? 0));
  return most;
}

/** `unbalanced` for one of the load vectors of a block. */
function unbalancedSide(
  { equationOf }: Prepared,
  answered: Float64Array,
  { forces }: LoadVector,
  side: number,
  count: number,
): number {
  let most = 0;
  for (let f = 0; f < equationOf.length; f++) {
    if ((equationOf[f] ?? -1) >= 0)
      most = Math.max(most, Math.abs((forces[f] ?? 0) - (answered[f * count + side] ?? 0)));
  }
  return most;
}

/** Here and in the following, values of several load vectors stand freedom by freedom: value[freedom·count + side]. */
function start(prepared: Prepared, loads: readonly LoadVector[], near: readonly (Float64Array | null)[]): Movement {
  const count = loads.length;
  const { held } = prepared;
  const movement = new Float64Array(held.length * count);
  let settles = near.some((other) => other !== null);
  near.forEach((other, s) => {
    if (other !== null) for (let f = 0; f < held.length; f++) movement[f * count + s] = other[f] ?? 0;
  });
  loads.forEach(({ settlement }, s) => {
    for (let f = 0; f < held.length; f++) {
      if (!held[f]) continue;
      const given = settlement[f] ?? 0;
      movement[f * count + s] = given;
      settles ||= given !== 0;
    }
  });
  return { movement, answered: settles ? answer(prepared, movement, count) : new Float64Array(movement.length) };
}

const UNKNOWNS = new Scratch();

function refine(prepared: Prepared, loads: readonly LoadVector[], { movement, answered }: Movement): Movement {
  const { equationOf, factor, update } = prepared;
  const count = loads.length;
  const length = (factor.tree.equations + (update?.unknowns.length ?? 0)) * count;
  const x = UNKNOWNS.room(length).fill(0, 0, length);
  loads.forEach(({ forces }, s) => {
    for (let f = 0; f < equationOf.length; f++) {
      const equation = equationOf[f] ?? -1;
      if (equation >= 0) x[equation * count + s] = (forces[f] ?? 0) - (answered[f * count + s] ?? 0);
    }
  });
  if (update === null) solveInPlace(factor, x, count);
  else solveBordered(factor, update.border, x, count);
  const moved = movement.slice();
  for (let f = 0; f < equationOf.length; f++) {
    const equation = equationOf[f] ?? -1;
    if (equation < 0) continue;
    for (let s = 0; s < count; s++) moved[f * count + s] = (moved[f * count + s] ?? 0) + (x[equation * count + s] ?? 0);
  }
  return { movement: moved, answered: answer(prepared, moved, count) };
}

function answer({ elements }: Prepared, movement: Float64Array, count: number): Float64Array {
  const answered = new Float64Array(movement.length);
  for (const element of elements) addElementForcesOfSides(element, movement, answered, count);
  return answered;
}

/** The opposite of `sideOf`. */
function blockOf(sides: readonly Movement[]): Movement {
  const join = (part: (side: Movement) => Float64Array): Float64Array => {
    const block = new Float64Array(sides.reduce((sum, side) => sum + part(side).length, 0));
    sides.forEach((side, s) => {
      const values = part(side);
      for (let f = 0; f < values.length; f++) block[f * sides.length + s] = values[f] ?? 0;
    });
    return block;
  };
  return { movement: join(({ movement }) => movement), answered: join(({ answered }) => answered) };
}

function missing(): never {
  throw new Error("each load vector has its solution");
}

function sideOf(block: Movement, side: number, count: number): Movement {
  const take = (values: Float64Array): Float64Array => {
    const own = new Float64Array(values.length / count);
    for (let f = 0; f < own.length; f++) own[f] = values[f * count + side] ?? 0;
    return own;
  };
  return { movement: take(block.movement), answered: take(block.answered) };
}
