import { roundingBound } from "../numerics/tolerances.ts";
import type { Prepared } from "./prepared.ts";
import type { LoadVector } from "./solve-movement.ts";
import { largest } from "./vectors.ts";

/** The movement (6 per node) of the first idle direction that a load drives, null when none is loaded. */
export function unresistedLoad(
  { idle, equationOf }: Pick<Prepared, "idle" | "equationOf">,
  { forces }: Pick<LoadVector, "forces">,
): Float64Array | null {
  if (idle.length === 0) return null;
  const most = largest(forces);
  for (const { node, direction } of idle) {
    let work = 0;
    for (let c = 0; c < direction.length; c++) work += (direction[c] ?? 0) * (forces[node * 6 + c] ?? 0);
    if (Math.abs(work) <= ROUNDING * most) continue;
    const movement = new Float64Array(equationOf.length);
    direction.forEach((value, c) => (movement[node * 6 + c] = work > 0 ? value : -value));
    return movement;
  }
  return null;
}

/** Roundings behind one nodal force: a dozen members, each turned into global axes. */
const ROUNDING = roundingBound(256);
