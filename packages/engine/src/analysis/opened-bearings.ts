import { eliminateDense } from "../numerics/dense-ldlt.ts";
import { bearingStiffness } from "./bearing-state.ts";
import type { BorderUnknown } from "./border-unknowns.ts";
import type { Prepared } from "./prepared.ts";
import type { Responses } from "./responses.ts";
import type { Bearing } from "./system.ts";

/** What a state does when some of its bearings are held open and nothing else acts. */
export interface OpenedBearings {
  /** The pressures under these bearings when each is held open by 1 mm in turn; symmetric, full, row-major, N/mm. */
  readonly flexibility: Float64Array;
  /** Stiffness of what each of these bearings itself joins, N/mm: the measure of resistance to opening it. */
  readonly scale: Float64Array;
  /** Adds the pressures under all bearings with these open by so much, in mm. */
  readonly addPressures: (pressures: Float64Array, byMm: Float64Array) => void;
}

/** `responses` are those of the state that `base` was updated from, or of `base` itself. */
export function openedBearings(base: Prepared, members: readonly number[], responses: Responses): OpenedBearings {
  const { bearings } = base.system;
  const moved = base.update?.unknowns ?? [];
  const unknowns = [...moved, ...members.flatMap((b): BorderUnknown[] => opening(base, b))];
  const { corner, scale } = base.further.corner(unknowns);
  eliminateDense(corner, unknowns.length, moved.length, scale); // as when the state was prepared
  const force = Float64Array.from(members, (b) => unitForce(bearings[b]));
  const stiffness = Float64Array.from(members, (b) => bearingStiffness(base, b));
  return { flexibility: left(corner, moved.length, force), scale: stiffness, addPressures };

  function addPressures(pressures: Float64Array, byMm: Float64Array): void {
    const sizes = withOthers(
      corner,
      moved.length,
      byMm.map((mm, m) => mm * (force[m] ?? 0)),
    );
    responses.addPressures(pressures, unknowns, sizes);
    members.forEach((b, m) => {
      const own = bearings[b]?.kind === "link" ? (sizes[moved.length + m] ?? 0) : 0;
      pressures[b] = (pressures[b] ?? 0) + own;
    });
  }
}

/** What block elimination leaves on the further unknowns of the bearings, after those of the update (if any). */
function left(corner: Float64Array, eliminated: number, force: Float64Array): Float64Array {
  const n = force.length;
  const size = eliminated + n;
  const S = new Float64Array(n * n);
  for (let i = 0; i < n; i++) {
    for (let j = 0; j <= i; j++) {
      const value = (corner[(eliminated + i) * size + eliminated + j] ?? 0) * (force[i] ?? 0) * (force[j] ?? 0);
      S[i * n + j] = value;
      S[j * n + i] = value;
    }
  }
  return S;
}

/** All unknowns when those of the bearings are given: Lᵀ·y = −Mᵀ·given for the others, M being the rows of L below theirs. */
function withOthers(corner: Float64Array, eliminated: number, given: Float64Array): Float64Array {
  const size = eliminated + given.length;
  const all = new Float64Array(size);
  all.set(given, eliminated);
  for (let i = eliminated - 1; i >= 0; i--) {
    let sum = 0;
    for (let p = i + 1; p < size; p++) sum -= (corner[p * size + i] ?? 0) * (all[p] ?? 0);
    all[i] = sum;
  }
  return all;
}

function opening({ system }: Prepared, b: number): BorderUnknown[] {
  const bearing = system.bearings[b];
  if (bearing === undefined) return [];
  if (bearing.kind === "support") return [{ kind: "freed", freedom: bearing.freedom }];
  return [{ ...bearing, kind: "spring", stiffness: -bearing.stiffness }];
}

/** The unknown of a link is the force that opens it, N; of a support its opening itself, mm. */
function unitForce(bearing: Bearing | undefined): number {
  return bearing?.kind === "link" ? bearing.stiffness : 1;
}
