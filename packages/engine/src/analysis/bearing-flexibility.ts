import { eliminateDense } from "../numerics/dense-ldlt.ts";
import type { BorderUnknown } from "./border-unknowns.ts";
import type { Prepared } from "./prepared.ts";

/**
 * The pressures S under these bearings when each of them is held open by 1 mm in turn and nothing else acts; symmetric, full,
 * row-major, N/mm. What block elimination leaves on the further unknowns of the bearings, after those of the update (if any).
 */
export function bearingFlexibility(base: Prepared, members: readonly number[]): Float64Array {
  const { bearings } = base.system;
  const moved = base.update?.unknowns ?? [];
  const unknowns = [...moved, ...members.flatMap((b): BorderUnknown[] => opening(base, b))];
  const { corner, scale } = base.further.corner(unknowns);
  eliminateDense(corner, unknowns.length, moved.length, scale); // as when the state was prepared
  const n = members.length;
  const force = members.map((b) => unitForce(bearings[b]));
  const S = new Float64Array(n * n);
  for (let i = 0; i < n; i++) {
    for (let j = 0; j <= i; j++) {
      const value =
        (corner[(moved.length + i) * unknowns.length + moved.length + j] ?? 0) * (force[i] ?? 0) * (force[j] ?? 0);
      S[i * n + j] = value;
      S[j * n + i] = value;
    }
  }
  return S;
}

function opening({ system }: Prepared, b: number): BorderUnknown[] {
  const bearing = system.bearings[b];
  if (bearing === undefined) return [];
  if (bearing.kind === "support") return [{ kind: "freed", freedom: bearing.freedom }];
  return [{ ...bearing, kind: "spring", stiffness: -bearing.stiffness }];
}

/** The unknown of a link is the force that opens it, N; of a support its opening itself, mm. */
function unitForce(bearing: Prepared["system"]["bearings"][number] | undefined): number {
  return bearing?.kind === "link" ? bearing.stiffness : 1;
}
