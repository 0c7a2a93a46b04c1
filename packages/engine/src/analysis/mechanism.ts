import { addElementForces, addElementForceSizes, type Element } from "../elements/element.ts";
import type { SparseFactor } from "../numerics/sparse-factor.ts";
import { recoverInner, reduceLoads } from "../numerics/sparse-solve.ts";
import { roundingBound } from "../numerics/tolerances.ts";

/**
 * The movements, 6 per node, that nothing resists, found behind the loose pivots of a factorisation.
 *
 * Each loose equation was held by a spring; the movement z that a unit of that spring alone cannot resist is solved for and
 * refined. It is a mechanism when its strain energy zᵀ·K·z is within rounding of the terms |z|ᵀ·|K|·|z| it is the sum of:
 * then a stiffness whose entries differ from K by rounding alone lets z move freely, and no solution could be told from
 * another. The test has no unit and no reference to the size of the stiffness. Source: componentwise backward error, Oettli
 * and Prager, Numer. Math. 6 (1964) (from memory), applied to the energy.
 */
export function looseMovements(prepared: Factorised, trusted: ReadonlySet<number>): Float64Array[] {
  return prepared.factor.loose.flatMap((equation) => {
    const movement = heldMovement(prepared, equation);
    // a pivot that was trusted once and still is not above zero has been lost in rounding: the same as a mechanism
    return trusted.has(equation) || resistsNothing(prepared.elements, movement) ? [movement] : [];
  });
}

interface Factorised {
  readonly factor: SparseFactor;
  readonly elements: readonly Element[];
  readonly equationOf: Int32Array;
}

/** Roundings behind one entry of K: three turns into global axes, sums over a dozen elements. */
const ROUNDING = roundingBound(128);

/** The solution of (K + springs)·z = spring of one loose equation, refined until its residual is rounding. */
function heldMovement(prepared: Factorised, loose: number): Float64Array {
  const { factor, equationOf } = prepared;
  const stiffness = (equation: number): number => (factor.assembledDiagonal[equation] ?? 0) || 1;
  const movement = new Float64Array(equationOf.length);
  for (let step = 0; step < 3; step++) {
    const x = new Float64Array(factor.tree.equations);
    x[loose] = stiffness(loose);
    const answered = new Float64Array(movement.length);
    if (step > 0) for (const element of prepared.elements) addElementForces(element, movement, answered);
    equationOf.forEach((equation, freedom) => {
      if (equation >= 0) x[equation] = (x[equation] ?? 0) - (answered[freedom] ?? 0);
    });
    for (const equation of factor.loose)
      x[equation] = (x[equation] ?? 0) - stiffness(equation) * valueAt(movement, equationOf, equation);
    reduceLoads(factor, x, 1);
    x.fill(0, factor.tree.eliminated); // retained unknowns, if any, stay where they are
    recoverInner(factor, x, 1);
    equationOf.forEach((equation, freedom) => {
      if (equation >= 0) movement[freedom] = (movement[freedom] ?? 0) + (x[equation] ?? 0);
    });
  }
  return movement;
}

function valueAt(movement: Float64Array, equationOf: Int32Array, equation: number): number {
  return movement[equationOf.indexOf(equation)] ?? 0;
}

/** Whether the strain energy of a movement is within rounding of the terms it is the sum of. */
export function resistsNothing(elements: readonly Element[], movement: Float64Array): boolean {
  const answered = new Float64Array(movement.length);
  const sizes = new Float64Array(movement.length);
  for (const element of elements) {
    if (!isMoved(element, movement)) continue; // mostly one container moves among many
    addElementForces(element, movement, answered);
    addElementForceSizes(element, movement, sizes);
  }
  let energy = 0;
  let terms = 0;
  for (let f = 0; f < movement.length; f++) {
    const z = movement[f] ?? 0;
    energy += z * (answered[f] ?? 0);
    terms += Math.abs(z) * (sizes[f] ?? 0);
  }
  return energy <= ROUNDING * terms;
}

const isMoved = ({ freedoms }: Element, movement: Float64Array): boolean =>
  freedoms.some((freedom) => movement[freedom] !== 0);
