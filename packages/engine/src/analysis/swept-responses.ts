import { elementForceOn, type Element } from "../elements/element.ts";
import { Scratch } from "../numerics/scratch.ts";
import { recoverInner } from "../numerics/sparse-solve.ts";
import { linkForce } from "./bearing-state.ts";
import type { BorderUnknown } from "./border-unknowns.ts";
import type { Prepared } from "./prepared.ts";
import type { Responses } from "./responses.ts";
import { addTimes } from "./vectors.ts";

/** The response to all unknowns at once: what they bring to the equations is eliminated already, one sweep back is left. */
export class SweptResponses implements Responses {
  private readonly from: Prepared;
  private elementsAt: ReadonlyMap<number, readonly Element[]> | undefined;

  constructor(from: Prepared) {
    this.from = from;
  }

  addMovement(sum: Float64Array, unknowns: readonly BorderUnknown[], sizes: Float64Array): void {
    addTimes(sum, this.movementUnder(unknowns, sizes), 1);
  }

  addPressures(sum: Float64Array, unknowns: readonly BorderUnknown[], sizes: Float64Array): void {
    const movement = this.movementUnder(unknowns, sizes);
    const beside = besideSupports(unknowns, sizes);
    this.from.system.bearings.forEach((bearing, b) => {
      const own =
        bearing.kind === "support"
          ? this.reaction(bearing.freedom, movement) + (beside.get(bearing.freedom) ?? 0)
          : linkForce(bearing, movement);
      sum[b] = (sum[b] ?? 0) + own;
    });
  }

  /** Only the elements at the support are asked: they are few. */
  private reaction(freedom: number, movement: Float64Array): number {
    this.elementsAt ??= elementsAt(this.from);
    return (this.elementsAt.get(freedom) ?? []).reduce(
      (sum, element) => sum + elementForceOn(element, freedom, movement),
      0,
    );
  }

  /** −K⁻¹·W·sizes, and the movement of what is freed itself. */
  private movementUnder(unknowns: readonly BorderUnknown[], sizes: Float64Array): Float64Array {
    const { equationOf, factor, further } = this.from;
    const { equations } = factor.tree;
    const x = UNKNOWNS.room(equations).fill(0, 0, equations);
    further.reduced(unknowns).forEach(({ firsts, starts, values }, c) => {
      const size = sizes[c] ?? 0;
      if (size === 0) return;
      for (let n = 0; n < firsts.length; n++) {
        const end = starts[n + 1] ?? 0;
        for (let v = starts[n] ?? 0, at = firsts[n] ?? 0; v < end; v++, at++)
          x[at] = (x[at] ?? 0) - size * (values[v] ?? 0);
      }
    });
    recoverInner(factor, x, 1);
    const movement = new Float64Array(equationOf.length);
    for (let f = 0; f < movement.length; f++) {
      const equation = equationOf[f] ?? -1;
      if (equation >= 0) movement[f] = x[equation] ?? 0;
    }
    unknowns.forEach((unknown, n) => {
      if (unknown.kind === "freed") movement[unknown.freedom] = (movement[unknown.freedom] ?? 0) + (sizes[n] ?? 0);
    });
    return movement;
  }
}

const UNKNOWNS = new Scratch();

/** The elements at the freedom of each support. */
function elementsAt({ system, elements }: Prepared): Map<number, Element[]> {
  const at = new Map<number, Element[]>();
  for (const bearing of system.bearings) if (bearing.kind === "support") at.set(bearing.freedom, []);
  for (const element of elements) for (const freedom of element.freedoms) at.get(freedom)?.push(element);
  return at;
}

/** Forces that further springs bring to the ground beside its supports, by freedom. */
function besideSupports(unknowns: readonly BorderUnknown[], sizes: Float64Array): Map<number, number> {
  const beside = new Map<number, number>();
  unknowns.forEach((unknown, n) => {
    if (unknown.kind !== "spring") return;
    const size = sizes[n] ?? 0;
    beside.set(unknown.lower, (beside.get(unknown.lower) ?? 0) + size);
    beside.set(unknown.upper, (beside.get(unknown.upper) ?? 0) - size);
  });
  return beside;
}
