import { lemke } from "../numerics/lemke.ts";
import { SOLUTION_ACCURACY } from "../numerics/tolerances.ts";
import { bearingForce, bearingGap, bearingStiffness, openingLoad } from "./bearing-state.ts";
import { drivenMovement } from "./driven-movement.ts";
import { prepare, type Preparation } from "./prepare.ts";
import type { Prepared } from "./prepared.ts";
import { solveMovements, type LoadVector, type Movement } from "./solve-movement.ts";
import { holdsSomething, type ContactState, type System } from "./system.ts";

export type ContactOutcome =
  | { readonly settled: true; readonly prepared: Prepared; readonly result: Movement; readonly rounds: number }
  | { readonly settled: false; readonly movement: Float64Array | null; readonly rounds: number };

/**
 * Finds which bearings open under one load vector, given the solution with all of them closed.
 *
 * The openings δ ≥ 0 and the pressures λ = λ₀ + S·δ ≥ 0 with δ·λ = 0 form a linear complementarity problem whose matrix S
 * (the answer of the closed structure to a unit opening) is positive semidefinite. It is solved on a growing set of
 * bearings: those that pull join it and none leaves, so there are at most as many rounds as bearings; each round ends by
 * the proof of `lemke`. The state found is then factorised afresh and checked on its own.
 *
 * A bearing that opens gives up for good what it held besides (where the system has stand-ins, another takes
 * it over); each such restart loses at least one more, so these end as well.
 *
 * `prepareIn` factorises the system in a state; it may know some already.
 */
export function settleContact(
  system: System,
  closed: Prepared,
  load: LoadVector,
  result: Movement,
  prepareIn: (state: ContactState) => Preparation = (state) => prepare(system, state),
): ContactOutcome {
  let base = closed;
  let basis = result;
  for (let rounds = 1; ;) {
    const found = openings(base, load, basis, rounds);
    rounds = found.rounds;
    const lost = base.state.lost.map((flag, b) =>
      flag || (found.open[b] && holdsSomething(system, b, base.state.lost)) ? 1 : 0,
    );
    if (lost.every((flag, b) => flag === base.state.lost[b]))
      return confirm(base, load, basis, found.open, rounds, prepareIn);
    const without = prepareIn({ open: new Uint8Array(lost.length), lost });
    if (!without.stable) return { settled: false, movement: drivenMovement(without.movements, load), rounds };
    base = without.prepared;
    basis = only(solveMovements(base, [load]));
  }
}

interface Openings {
  readonly open: Uint8Array;
  readonly rounds: number;
}

function openings(base: Prepared, load: LoadVector, basis: Movement, before: number): Openings {
  const { bearings } = base.system;
  const start = bearings.map((bearing) => bearingForce(bearing, basis, load));
  const allowed = SOLUTION_ACCURACY * largest(start);
  const unit = new Map<number, number[]>(); // bearing → pressures of all bearings under its unit opening
  let pressures = start;
  let open = new Uint8Array(bearings.length);
  for (let rounds = before; ; rounds++) {
    const pulling = pressures.flatMap((pressure, b) => (pressure < -allowed && !unit.has(b) ? [b] : []));
    if (pulling.length === 0) return { open, rounds };
    for (const [b, answer] of unitOpenings(base, pulling)) unit.set(b, answer);
    const members = [...unit.keys()].sort((a, b) => a - b);
    const opened = complementary(base, members, unit, start);
    open = new Uint8Array(bearings.length);
    members.forEach((b, m) => (open[b] = (opened.by[m] ?? 0) > 0 ? 1 : 0));
    if (opened.endless) return { open, rounds: rounds + 1 };
    pressures = start.map((pressure, c) =>
      members.reduce((sum, b, m) => sum + (unit.get(b)?.[c] ?? 0) * (opened.by[m] ?? 0), pressure),
    );
  }
}

/** For each of these bearings: the pressures under all bearings when it is held open by 1 mm and nothing else acts. */
function unitOpenings(base: Prepared, opened: readonly number[]): [number, number[]][] {
  const known = base.unitOpenings;
  const asked = opened.filter((b) => !known.has(b));
  const loads = asked.map((b) => openingLoad(base.system.bearings[b], base.equationOf.length));
  const results = asked.length > 0 ? solveMovements(base, loads) : [];
  results.forEach((result, k) => {
    const pressures = base.system.bearings.map((bearing, c) => {
      const own = c === asked[k] && bearing.kind === "link" ? bearing.stiffness : 0;
      return bearingForce(bearing, result, NO_LOAD) + own;
    });
    known.set(asked[k] ?? -1, pressures);
  });
  return opened.map((b) => [b, known.get(b) ?? []]);
}

const NO_LOAD = { forces: new Float64Array(0), settlement: new Float64Array(0) };

function complementary(
  base: Prepared,
  members: readonly number[],
  unit: ReadonlyMap<number, number[]>,
  start: readonly number[],
) {
  const n = members.length;
  const S = new Float64Array(n * n);
  members.forEach((b, column) => members.forEach((c, row) => (S[row * n + column] = unit.get(b)?.[c] ?? 0)));
  const q = Float64Array.from(members, (b) => start[b] ?? 0);
  const scale = Float64Array.from(members, (b) => bearingStiffness(base, b));
  const solution = lemke(S, q, scale, SOLUTION_ACCURACY);
  return solution.solved ? { by: solution.z, endless: false } : { by: solution.direction, endless: true };
}

/** Factorises the state found and checks it by itself; where rounding misled the search, single changes mend it. */
function confirm(
  base: Prepared,
  load: LoadVector,
  basis: Movement,
  open: Uint8Array,
  rounds: number,
  prepareIn: (state: ContactState) => Preparation,
): ContactOutcome {
  const seen = new Set<string>();
  let state: ContactState = { open, lost: base.state.lost };
  for (let round = rounds; ; round++) {
    const now = solveState(base, load, basis, state, prepareIn);
    if (!now.stable) return { settled: false, movement: drivenMovement(now.movements, load), rounds: round };
    const wrong = firstViolation(now.prepared, load, now.result);
    if (wrong < 0) return { settled: true, prepared: now.prepared, result: now.result, rounds: round };
    if (seen.has(state.open.join(""))) return { settled: false, movement: null, rounds: round };
    seen.add(state.open.join(""));
    state = { open: state.open.map((flag, b) => (b === wrong ? 1 - flag : flag)), lost: state.lost };
  }
}

function solveState(
  base: Prepared,
  load: LoadVector,
  basis: Movement,
  state: ContactState,
  prepareIn: (state: ContactState) => Preparation,
) {
  if (state.open.every((flag) => flag === 0)) return { stable: true as const, prepared: base, result: basis };
  const preparation = prepareIn(state);
  if (!preparation.stable) return preparation;
  const { prepared } = preparation;
  return { stable: true as const, prepared, result: only(solveMovements(prepared, [load])) };
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

function only([first]: readonly Movement[]): Movement {
  if (first === undefined) throw new Error("one load vector gives one movement");
  return first;
}
