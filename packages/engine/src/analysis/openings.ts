import { lemke } from "../numerics/lemke.ts";
import { SOLUTION_ACCURACY } from "../numerics/tolerances.ts";
import type { BearingStates } from "./bearing-states.ts";
import type { Flexibility } from "./opened-bearings.ts";
import type { Prepared } from "./prepared.ts";
import { addedPressures, type Course } from "./solved-together.ts";
import { addTimes, largest, numbersOf } from "./vectors.ts";

/** A state with no bearing open, the pressures under all of them and, where it was met on the way, its movement. */
export interface Pressed {
  readonly prepared: Prepared;
  readonly pressures: Float64Array;
  readonly movement: Float64Array | null;
}

export interface Openings {
  readonly open: Uint8Array;
  readonly rounds: number;
  /** The movement with these open, where it was met on the way. */
  readonly moved: Float64Array | null;
}

/** Which bearings open: the complementarity problem on those that pull, round by round until no other pulls. */
export function* openings(
  { prepared, pressures: start, movement }: Pressed,
  states: BearingStates,
  held: Uint8Array,
  before: number,
): Course<Openings> {
  const allowed = SOLUTION_ACCURACY * largest(start);
  const opened = states.opened(prepared);
  const responses = states.responses(prepared.update?.from ?? prepared);
  const joined = new Uint8Array(start.length);
  const pressures = start.slice();
  const open = new Uint8Array(start.length);
  let moved = movement;
  for (let rounds = before; ; rounds++) {
    if (!joinPulling(pressures, allowed, held, joined)) return { open, rounds, moved };
    const inOrder = flaggedIn(joined);
    const found = complementary(inOrder, opened.among(inOrder), start);
    inOrder.forEach((b, m) => (open[b] = (found.by[m] ?? 0) > 0 ? 1 : 0));
    if (found.endless) return { open, rounds: rounds + 1, moved: null };
    pressures.set(start);
    const behind = yield* addedPressures(responses, opened.pressuresToAdd(pressures, inOrder, found.by));
    moved = sumOf(movement, behind);
  }
}

/** Flags those that pull besides; whether there are any. */
function joinPulling(pressures: Float64Array, allowed: number, held: Uint8Array, joined: Uint8Array): boolean {
  let pulling = false;
  for (let b = 0; b < pressures.length; b++) {
    if ((pressures[b] ?? 0) >= -allowed || held[b] || joined[b]) continue;
    joined[b] = 1;
    pulling = true;
  }
  return pulling;
}

function flaggedIn(flags: Uint8Array): number[] {
  const places: number[] = [];
  for (let b = 0; b < flags.length; b++) if (flags[b]) places.push(b);
  return places;
}

function complementary(members: readonly number[], { flexibility, scale }: Flexibility, start: Float64Array) {
  const q = numbersOf(members, (b) => start[b] ?? 0);
  const solution = lemke(flexibility, q, scale, SOLUTION_ACCURACY);
  return solution.solved ? { by: solution.z, endless: false } : { by: solution.direction, endless: true };
}

/** Null where either is not at hand. */
export function sumOf(movement: Float64Array | null, behind: Float64Array | null): Float64Array | null {
  if (movement === null || behind === null) return null;
  const sum = movement.slice();
  addTimes(sum, behind, 1);
  return sum;
}
