import { lemke } from "../numerics/lemke.ts";
import { SOLUTION_ACCURACY, SUM_ROUNDING } from "../numerics/tolerances.ts";
import { bearingFlexibility } from "./bearing-flexibility.ts";
import { bearingForce, bearingGap, bearingStiffness, openingLoad } from "./bearing-state.ts";
import { drivenMovement } from "./driven-movement.ts";
import { bearingStates, type BearingStates } from "./bearing-states.ts";
import type { Prepared } from "./prepared.ts";
import { unbalanced, type LoadVector, type Movement } from "./solve-movement.ts";
import { solvedTogether, type Course } from "./solved-together.ts";
import { holdsSomething, type ContactState, type System } from "./system.ts";

export type ContactOutcome =
  | { readonly settled: true; readonly prepared: Prepared; readonly result: Movement; readonly rounds: number }
  | { readonly settled: false; readonly movement: Float64Array | null; readonly rounds: number };

/**
 * Finds which bearings open under each load vector, given the solutions with all of them closed.
 *
 * The openings δ ≥ 0 and the pressures λ = λ₀ + S·δ ≥ 0 with δ·λ = 0 form a linear complementarity problem whose matrix S
 * (the answer of the closed structure to a unit opening) is positive semidefinite. It is solved on a growing set of
 * bearings: those that pull join it and none leaves, so there are at most as many rounds as bearings; each round ends by
 * the proof of `lemke`. The state found is then solved and checked on its own.
 *
 * A bearing that opens gives up for good what it held besides (where the system has stand-ins, another takes
 * it over); each such restart loses at least one more, so these end as well.
 *
 * `states` leads from one state to another; it may know some already. Load vectors take their courses side by side, so that
 * those in one state are solved for together; each gets the bits it would get by itself.
 */
export function settleContact(
  system: System,
  closed: Prepared,
  loads: readonly LoadVector[],
  results: readonly Movement[],
  states: BearingStates = bearingStates(system),
): ContactOutcome[] {
  return solvedTogether(loads.map((load, s) => settle(system, closed, load, results[s] ?? missing(), states)));
}

function* settle(
  system: System,
  closed: Prepared,
  load: LoadVector,
  result: Movement,
  states: BearingStates,
): Course<ContactOutcome> {
  let base = closed;
  let basis = result;
  for (let rounds = 1; ;) {
    const found = yield* openings(base, load, basis, rounds);
    rounds = found.rounds;
    const lost = base.state.lost.map((flag, b) =>
      flag || (found.open[b] && holdsSomething(system, b, base.state.lost)) ? 1 : 0,
    );
    if (lost.every((flag, b) => flag === base.state.lost[b]))
      return yield* confirm(base, load, basis, found.open, rounds, states);
    const without = yield* solveState(base, load, basis, { open: new Uint8Array(lost.length), lost }, states);
    if (!without.stable) return { settled: false, movement: drivenMovement(without.movements, load), rounds };
    base = without.prepared;
    basis = without.result;
  }
}

interface Openings {
  readonly open: Uint8Array;
  readonly rounds: number;
}

function* openings(base: Prepared, load: LoadVector, basis: Movement, before: number): Course<Openings> {
  const { bearings } = base.system;
  const start = bearings.map((bearing) => bearingForce(bearing, basis, load));
  const allowed = SOLUTION_ACCURACY * largest(start);
  const members = new Set<number>();
  let pressures = start;
  let open = new Uint8Array(bearings.length);
  for (let rounds = before; ; rounds++) {
    const pulling = pressures.flatMap((pressure, b) => (pressure < -allowed && !members.has(b) ? [b] : []));
    if (pulling.length === 0) return { open, rounds };
    for (const b of pulling) members.add(b);
    const inOrder = [...members].sort((a, b) => a - b);
    const opened = complementary(base, inOrder, start);
    open = new Uint8Array(bearings.length);
    inOrder.forEach((b, m) => (open[b] = (opened.by[m] ?? 0) > 0 ? 1 : 0));
    if (opened.endless) return { open, rounds: rounds + 1 };
    pressures = yield* pressuresUnder(base, inOrder, opened.by, start);
  }
}

/** Pressures under all bearings when some are held open by so much, in mm. */
function* pressuresUnder(
  base: Prepared,
  members: readonly number[],
  by: Float64Array,
  start: readonly number[],
): Course<number[]> {
  const { bearings } = base.system;
  const openingsMm = new Float64Array(bearings.length);
  members.forEach((b, m) => (openingsMm[b] = by[m] ?? 0));
  const result = yield { prepared: base, load: openingLoad(bearings, openingsMm, base.equationOf.length), near: null };
  return bearings.map((bearing, b) => {
    const own = bearing.kind === "link" ? bearing.stiffness * (openingsMm[b] ?? 0) : 0;
    return (start[b] ?? 0) + bearingForce(bearing, result, NO_LOAD) + own;
  });
}

const NO_LOAD = { forces: new Float64Array(0), settlement: new Float64Array(0) };

function complementary(base: Prepared, members: readonly number[], start: readonly number[]) {
  const S = bearingFlexibility(base, members);
  const q = Float64Array.from(members, (b) => start[b] ?? 0);
  const scale = Float64Array.from(members, (b) => bearingStiffness(base, b));
  const solution = lemke(S, q, scale, SOLUTION_ACCURACY);
  return solution.solved ? { by: solution.z, endless: false } : { by: solution.direction, endless: true };
}

/** Solves the state found and checks it by itself; where rounding misled the search, single changes mend it. */
function* confirm(
  base: Prepared,
  load: LoadVector,
  basis: Movement,
  open: Uint8Array,
  rounds: number,
  states: BearingStates,
): Course<ContactOutcome> {
  const seen = new Set<string>();
  let state: ContactState = { open, lost: base.state.lost };
  for (let round = rounds; ; round++) {
    const now = yield* solveState(base, load, basis, state, states);
    if (!now.stable) return { settled: false, movement: drivenMovement(now.movements, load), rounds: round };
    const wrong = firstViolation(now.prepared, load, now.result);
    if (wrong < 0) return { settled: true, prepared: now.prepared, result: now.result, rounds: round };
    if (seen.has(state.open.join(""))) return { settled: false, movement: null, rounds: round };
    seen.add(state.open.join(""));
    state = { open: state.open.map((flag, b) => (b === wrong ? 1 - flag : flag)), lost: state.lost };
  }
}

/** By an update of the state at hand, or, where that does not bring balance, by a factorisation of its own. */
function* solveState(
  base: Prepared,
  load: LoadVector,
  basis: Movement,
  state: ContactState,
  states: BearingStates,
): Course<SolvedState> {
  if (sameState(base.state, state)) return { stable: true, prepared: base, result: basis };
  const updated = states.updated(base, state);
  if (updated !== null) {
    const result = yield { prepared: updated, load, near: basis };
    if (isBalanced(updated, result, load)) return { stable: true, prepared: updated, result };
  }
  const preparation = states.factorised(state);
  if (!preparation.stable) return preparation;
  return { ...preparation, result: yield { prepared: preparation.prepared, load, near: null } };
}

type SolvedState =
  | { readonly stable: true; readonly prepared: Prepared; readonly result: Movement }
  | { readonly stable: false; readonly movements: readonly Float64Array[] };

function sameState(a: ContactState, b: ContactState): boolean {
  return a.open.every((flag, n) => flag === b.open[n]) && a.lost.every((flag, n) => flag === b.lost[n]);
}

function isBalanced(prepared: Prepared, result: Movement, load: LoadVector): boolean {
  return unbalanced(prepared, result, load) <= SUM_ROUNDING * largest(result.answered);
}

/** The first bearing that pulls though closed, or overlaps though open; −1 for none. */
function firstViolation(prepared: Prepared, load: LoadVector, result: Movement): number {
  const { bearings } = prepared.system;
  const { open } = prepared.state;
  const pressures = bearings.map((bearing, b) => (open[b] ? 0 : bearingForce(bearing, result, load)));
  const gaps = bearings.map((bearing, b) => (open[b] ? bearingGap(bearing, result, load) : 0));
  const leastPressure = -SOLUTION_ACCURACY * largest(pressures);
  const leastGap = -SOLUTION_ACCURACY * largest(result.movement);
  return bearings.findIndex((_, b) => (pressures[b] ?? 0) < leastPressure || (gaps[b] ?? 0) < leastGap);
}

function largest(values: Iterable<number>): number {
  let most = 0;
  for (const value of values) most = Math.max(most, Math.abs(value));
  return most;
}

function missing(): never {
  throw new Error("each load vector has its solution");
}
