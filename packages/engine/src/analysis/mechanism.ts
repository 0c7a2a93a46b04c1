import { addElementForces, addElementForceSizes } from "../elements/element.ts";
import { recoverInner, reduceLoads } from "../numerics/sparse-solve.ts";
import { roundingBound } from "../numerics/tolerances.ts";
import type { Prepared } from "./prepared.ts";

/**
 * The movements, 6 per node, that nothing resists, found behind the loose pivots of a factorisation.
 *
 * Each loose equation was held by a spring; the movement z that a unit of that spring alone cannot resist is solved for and
 * refined. It is a mechanism when every component of K·z is within rounding of the terms |K|·|z| it is the sum of: then z
 * is an exact null vector of a stiffness that differs from K by no more than rounding (Oettli and Prager, Numer. Math. 6
 * (1964), from memory). The test has no unit and no reference to the size of the stiffness.
 */
export function looseMovements(prepared: Factorised): Float64Array[] {
  const { factor } = prepared;
  return factor.loose
    .map((equation) => heldMovement(prepared, equation))
    .filter((movement) => resistsNothing(prepared, movement));
}

type Factorised = Pick<Prepared, "factor" | "elements" | "equationOf">;

/** Operations behind one component of K·z: a node's dozen elements, 12 to 24 terms each, tens of roundings in each entry. */
const ROUNDING = roundingBound(1024);

/** The solution of (K + springs)·z = spring of one loose equation, refined until its residual is rounding. */
function heldMovement(prepared: Factorised, loose: number): Float64Array {
  const { factor, equationOf } = prepared;
  const stiffness = (equation: number): number => (factor.assembledDiagonal[equation] ?? 0) || 1;
  const movement = new Float64Array(equationOf.length);
  for (let step = 0; step < 3; step++) {
    const x = new Float64Array(factor.tree.equations);
    x[loose] = stiffness(loose);
    const answered = new Float64Array(movement.length);
    for (const element of prepared.elements) addElementForces(element, movement, answered);
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

function resistsNothing({ elements, equationOf, factor }: Factorised, movement: Float64Array): boolean {
  const answered = new Float64Array(movement.length);
  const sizes = new Float64Array(movement.length);
  for (const element of elements) {
    addElementForces(element, movement, answered);
    addElementForceSizes(element, movement, sizes);
  }
  const { eliminated } = factor.tree;
  return equationOf.every(
    (equation, f) => equation < 0 || equation >= eliminated || Math.abs(answered[f] ?? 0) <= ROUNDING * (sizes[f] ?? 0),
  );
}
