import type { Element } from "../elements/element.ts";
import { loneNullVector } from "../numerics/dense-ldlt.ts";
import { SOLUTION_ACCURACY } from "../numerics/tolerances.ts";
import type { BorderUnknown } from "./border-unknowns.ts";
import { resistsNothing } from "./mechanism.ts";
import type { Prepared } from "./prepared.ts";
import type { Responses } from "./responses.ts";
import { largest } from "./vectors.ts";

/**
 * The one movement (6 per node) that nothing resists once a state is led into another, from the one pivot that further
 * unknowns lose: what they do together, and by how much each. Null where several are lost, where a single node moves (it may
 * be idle) or where the elements of the other state resist it after all: then a factorisation has to say.
 */
export function lostHold(
  from: Prepared,
  unknowns: readonly BorderUnknown[],
  { elements, held }: { readonly elements: readonly Element[]; readonly held: Uint8Array },
  responses: Responses,
): Float64Array | null {
  const { corner, scale } = from.further.corner(unknowns);
  const sizes = loneNullVector(corner, unknowns.length, scale);
  if (sizes === null) return null;
  const movement = new Float64Array(held.length);
  responses.addMovement(movement, unknowns, sizes);
  for (let freedom = 0; freedom < held.length; freedom++) if (held[freedom]) movement[freedom] = 0; // but for rounding it is
  if (ofOneNode(movement) || !resistsNothing(elements, movement)) return null;
  return leadingForwards(from, movement);
}

function ofOneNode(movement: Float64Array): boolean {
  const first = movement.findIndex((value) => value !== 0);
  const last = movement.findLastIndex((value) => value !== 0);
  return Math.floor(first / 6) === Math.floor(last / 6);
}

/** Forwards in the last of its freedoms that the factorisation comes to, as a movement behind a loose pivot mostly is. */
function leadingForwards({ equationOf }: Prepared, movement: Float64Array): Float64Array {
  const least = SOLUTION_ACCURACY * largest(movement);
  let last = -1;
  for (let freedom = 0; freedom < movement.length; freedom++) {
    if (Math.abs(movement[freedom] ?? 0) <= least) continue;
    if (last < 0 || (equationOf[freedom] ?? -1) > (equationOf[last] ?? -1)) last = freedom;
  }
  return (movement[last] ?? 0) < 0 ? movement.map((value) => -value) : movement;
}
