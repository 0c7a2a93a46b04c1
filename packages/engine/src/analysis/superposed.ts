import { solveDense } from "../numerics/dense-ldlt.ts";
import type { BorderUnknown } from "./border-unknowns.ts";
import type { StateUpdate } from "./prepared.ts";
import type { PressureSum, Responses } from "./responses.ts";
import type { LoadVector, Movement } from "./solve-movement.ts";
import { numbersOf } from "./vectors.ts";

/**
 * How far each unknown of an update goes under a load, from `basis`, the movement of the state it was updated from: as far as
 * it takes to make up for what that state misses.
 */
function sizesOf({ unknowns, border }: StateUpdate, basis: Movement, load: LoadVector): Float64Array {
  const sizes = numbersOf(unknowns, (unknown) => missBy(unknown, basis, load));
  solveDense(border.corner, unknowns.length, sizes, 1);
  return sizes;
}

/** The movement of an updated state under a load. */
export function superposed(update: StateUpdate, basis: Movement, load: LoadVector, responses: Responses): Float64Array {
  const sizes = sizesOf(update, basis, load);
  const movement = basis.movement.slice();
  responses.addMovement(movement, update.unknowns, sizes);
  return movement;
}

/** What makes the pressures of an updated state under a load of those of the state it was updated from. */
export function pressuresToAdd(
  update: StateUpdate,
  basis: Movement,
  load: LoadVector,
  before: Float64Array,
): PressureSum {
  return { pressures: before.slice(), unknowns: update.unknowns, sizes: sizesOf(update, basis, load) };
}

/** By how much the factorised state misses what the unknown is there for: where springs part, held freedoms, freed forces. */
function missBy(unknown: BorderUnknown, { movement, answered }: Movement, load: LoadVector): number {
  if (unknown.kind === "spring") return (movement[unknown.upper] ?? 0) - (movement[unknown.lower] ?? 0);
  const { freedom } = unknown;
  if (unknown.kind === "held") return (load.settlement[freedom] ?? 0) - (movement[freedom] ?? 0);
  return (load.forces[freedom] ?? 0) - (answered[freedom] ?? 0);
}
