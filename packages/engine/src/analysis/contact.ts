import { SOLUTION_ACCURACY, SUM_ROUNDING } from "../numerics/tolerances.ts";
import { bearingForce, bearingGap } from "./bearing-state.ts";
import { bearingStates, type BearingStates } from "./bearing-states.ts";
import { drivenMovement } from "./driven-movement.ts";
import { openings, sumOf, type Pressed } from "./openings.ts";
import type { Prepared } from "./prepared.ts";
import { largest, numbersOf } from "./vectors.ts";
import { unbalanced, type LoadVector, type Movement } from "./solve-movement.ts";
import { addedPressures, solutionOf, solvedTogether, type Course } from "./solved-together.ts";
import { pressuresToAdd, superposed } from "./superposed.ts";
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
 * those in one state are solved for together; each gets the bits it would get by itself. Bearings flagged in `held` hold
 * whatever pulls.
 */
export function settleContact(
  system: System,
  closed: Prepared,
  loads: readonly LoadVector[],
  results: readonly Movement[],
  states: BearingStates = bearingStates(system),
  held: Uint8Array = new Uint8Array(system.bearings.length),
): ContactOutcome[] {
  return solvedTogether(
    loads.map((load, s) => settle(load, { prepared: closed, result: results[s] ?? missing() }, states, held)),
  );
}

/** A state that stands, and its movement under the load at hand. */
type Standing = { readonly prepared: Prepared; readonly result: Movement };

function* settle(load: LoadVector, closed: Standing, states: BearingStates, held: Uint8Array): Course<ContactOutcome> {
  const { system } = closed.prepared;
  let factorised = closed;
  let pressed = pressedIn(closed, load);
  let base = pressed;
  for (let before = 1; ;) {
    const { open, rounds, moved } = yield* openings(base, states, held, before);
    const { lost } = base.prepared.state;
    const nowLost = lost.map((flag, b) => (flag || (open[b] && holdsSomething(system, b, lost)) ? 1 : 0));
    if (nowLost.every((flag, b) => flag === lost[b]))
      return yield* confirm(factorised, load, { open, lost }, moved, states, held, rounds);
    const without: ContactState = { open: new Uint8Array(lost.length), lost: nowLost };
    const updated = states.updated(factorised.prepared, without);
    if (updated?.stable === false) return { settled: false, movement: drivenMovement(updated.movements, load), rounds };
    if (updated?.prepared.update) {
      const { prepared } = updated;
      const sum = pressuresToAdd(updated.prepared.update, factorised.result, load, pressed.pressures);
      const behind = yield* addedPressures(states.responses(factorised.prepared), sum);
      base = { prepared, pressures: sum.pressures, movement: sumOf(factorised.result.movement, behind) };
    } else {
      const solved = yield* solveAfresh(load, without, states);
      if (!solved.stable) return { settled: false, movement: drivenMovement(solved.movements, load), rounds };
      factorised = solved;
      pressed = pressedIn(solved, load);
      base = pressed;
    }
    before = rounds;
  }
}

const pressedIn = ({ prepared, result }: Standing, load: LoadVector): Pressed => ({
  prepared,
  pressures: numbersOf(prepared.system.bearings, (bearing) => bearingForce(bearing, result, load)),
  movement: result.movement,
});

/**
 * Solves the state found, from `moved` where that is its movement, and checks it by itself; where rounding misled the search,
 * single changes mend it.
 */
function* confirm(
  factorised: Standing,
  load: LoadVector,
  found: ContactState,
  moved: Float64Array | null,
  states: BearingStates,
  held: Uint8Array,
  rounds: number,
): Course<ContactOutcome> {
  const seen = new Set<string>();
  let state = found;
  for (let round = rounds; ; round++) {
    const now = yield* solveState(factorised, load, state, state === found ? moved : null, states);
    if (!now.stable) return { settled: false, movement: drivenMovement(now.movements, load), rounds: round };
    const wrong = firstViolation(now, load, held);
    if (wrong < 0) return { settled: true, prepared: now.prepared, result: now.result, rounds: round };
    if (seen.has(state.open.join(""))) return { settled: false, movement: null, rounds: round };
    seen.add(state.open.join(""));
    state = { open: state.open.map((flag, b) => (b === wrong ? 1 - flag : flag)), lost: state.lost };
  }
}

/** From a factorised state by what is different, or, where that does not bring balance, by a factorisation of its own. */
function* solveState(
  from: Standing,
  load: LoadVector,
  state: ContactState,
  moved: Float64Array | null,
  states: BearingStates,
): Course<SolvedState> {
  if (sameState(from.prepared.state, state)) return { stable: true, ...from };
  const updated = states.updated(from.prepared, state);
  if (updated?.stable === false) return updated;
  if (updated?.prepared.update) {
    const { prepared } = updated;
    const near = moved ?? superposed(updated.prepared.update, from.result, load, states.responses(from.prepared));
    const result = yield* solutionOf({ prepared, load, near });
    if (isBalanced(prepared, result, load)) return { stable: true, prepared, result };
  }
  return yield* solveAfresh(load, state, states);
}

function* solveAfresh(load: LoadVector, state: ContactState, states: BearingStates): Course<SolvedState> {
  const preparation = states.factorised(state);
  if (!preparation.stable) return preparation;
  return { ...preparation, result: yield* solutionOf({ prepared: preparation.prepared, load, near: null }) };
}

type SolvedState =
  ({ readonly stable: true } & Standing) | { readonly stable: false; readonly movements: readonly Float64Array[] };

function sameState(a: ContactState, b: ContactState): boolean {
  return a.open.every((flag, n) => flag === b.open[n]) && a.lost.every((flag, n) => flag === b.lost[n]);
}

function isBalanced(prepared: Prepared, result: Movement, load: LoadVector): boolean {
  return unbalanced(prepared, result, load) <= SUM_ROUNDING * largest(result.answered);
}

/** The first bearing that pulls though closed, or overlaps though open; −1 for none. */
function firstViolation({ prepared, result }: Standing, load: LoadVector, held: Uint8Array): number {
  const { bearings } = prepared.system;
  const { open } = prepared.state;
  const pressures = numbersOf(bearings, (bearing, b) => (open[b] ? 0 : bearingForce(bearing, result, load)));
  const gaps = numbersOf(bearings, (bearing, b) => (open[b] ? bearingGap(bearing, result, load) : 0));
  const leastPressure = -SOLUTION_ACCURACY * largest(pressures);
  const leastGap = -SOLUTION_ACCURACY * largest(result.movement);
  return bearings.findIndex((_, b) => (!held[b] && (pressures[b] ?? 0) < leastPressure) || (gaps[b] ?? 0) < leastGap);
}

function missing(): never {
  throw new Error("each load vector has its solution");
}
