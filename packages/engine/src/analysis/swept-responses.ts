import { elementForceOn, type Element } from "../elements/element.ts";
import { Scratch } from "../numerics/scratch.ts";
import { recoverInner } from "../numerics/sparse-solve.ts";
import { linkForce } from "./bearing-state.ts";
import type { BorderUnknown } from "./border-unknowns.ts";
import type { Prepared } from "./prepared.ts";
import type { PressureSum, Responses } from "./responses.ts";
import { addTimes } from "./vectors.ts";

/** The response to all unknowns at once: what they bring to the equations is eliminated already, one sweep back is left. */
export class SweptResponses implements Responses {
  readonly sideBySide = true;
  private readonly from: Prepared;
  private elementsAt: ReadonlyMap<number, readonly Element[]> | undefined;

  constructor(from: Prepared) {
    this.from = from;
  }

  addMovement(sum: Float64Array, unknowns: readonly BorderUnknown[], sizes: Float64Array): void {
    this.movementsUnder([{ unknowns, sizes }]).forEach((movement) => addTimes(sum, movement, 1));
  }

  addPressures(sums: readonly PressureSum[]): Float64Array[] {
    const movements = this.movementsUnder(sums);
    movements.forEach((movement, side) => {
      const sum = sums[side];
      if (sum !== undefined) this.addPressuresOf(movement, sum);
    });
    return movements;
  }

  private addPressuresOf(movement: Float64Array, { pressures, unknowns, sizes }: PressureSum): void {
    const beside = besideSupports(unknowns, sizes);
    this.from.system.bearings.forEach((bearing, b) => {
      const own =
        bearing.kind === "support"
          ? this.reaction(bearing.freedom, movement) + (beside.get(bearing.freedom) ?? 0)
          : linkForce(bearing, movement);
      pressures[b] = (pressures[b] ?? 0) + own;
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

  /** −K⁻¹·W·sizes, and the movement of what is freed itself; one sweep for all. */
  private movementsUnder(all: readonly Going[]): Float64Array[] {
    const { equationOf, factor } = this.from;
    const count = all.length;
    const length = factor.tree.equations * count;
    const x = UNKNOWNS.room(length).fill(0, 0, length);
    all.forEach((going, side) => this.subtractColumns(x, going, side, count));
    recoverInner(factor, x, count);
    return all.map(({ unknowns, sizes }, side) => {
      const movement = new Float64Array(equationOf.length);
      for (let f = 0; f < movement.length; f++) {
        const equation = equationOf[f] ?? -1;
        if (equation >= 0) movement[f] = x[equation * count + side] ?? 0;
      }
      unknowns.forEach((unknown, n) => {
        if (unknown.kind === "freed") movement[unknown.freedom] = (movement[unknown.freedom] ?? 0) + (sizes[n] ?? 0);
      });
      return movement;
    });
  }

  private subtractColumns(x: Float64Array, { unknowns, sizes }: Going, side: number, count: number): void {
    this.from.further.reduced(unknowns).forEach(({ firsts, starts, values }, c) => {
      const size = sizes[c] ?? 0;
      if (size === 0) return;
      for (let n = 0; n < firsts.length; n++) {
        const end = starts[n + 1] ?? 0;
        for (let v = starts[n] ?? 0, at = (firsts[n] ?? 0) * count + side; v < end; v++, at += count)
          x[at] = (x[at] ?? 0) - size * (values[v] ?? 0);
      }
    });
  }
}

type Going = Pick<PressureSum, "unknowns" | "sizes">;

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
