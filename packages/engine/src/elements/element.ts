import { integerRoom } from "../numerics/number-room.ts";

/**
 * What every element is to the solution: the freedoms it joins (6·node + 0…5 for ux uy uz rx ry rz, global axes) and its
 * symmetric stiffness on them, full, row-major, N/mm and N·mm/rad.
 */
export interface Element {
  readonly freedoms: Int32Array;
  readonly matrix: Float64Array;
}

/** The six freedoms of each of these nodes, in order. */
export function freedomsOf(nodes: readonly number[]): Int32Array {
  const freedoms = integerRoom(nodes.length * 6);
  nodes.forEach((node, n) => {
    for (let c = 0; c < 6; c++) freedoms[n * 6 + c] = node * 6 + c;
  });
  return freedoms;
}

/** Adds the forces with which the element answers the movement, K·u, to `forces`. */
export function addElementForces({ freedoms, matrix }: Element, movement: Float64Array, forces: Float64Array): void {
  const size = freedoms.length;
  for (let i = 0; i < size; i++) {
    let sum = 0;
    for (let j = 0; j < size; j++) sum += (matrix[i * size + j] ?? 0) * (movement[freedoms[j] ?? 0] ?? 0);
    const freedom = freedoms[i] ?? 0;
    forces[freedom] = (forces[freedom] ?? 0) + sum;
  }
}

/** Adds |K|·|u|: the size of the terms that cancel in `addElementForces`, which bounds its rounding error. */
export function addElementForceSizes({ freedoms, matrix }: Element, movement: Float64Array, sizes: Float64Array): void {
  const size = freedoms.length;
  for (let i = 0; i < size; i++) {
    let sum = 0;
    for (let j = 0; j < size; j++) sum += Math.abs((matrix[i * size + j] ?? 0) * (movement[freedoms[j] ?? 0] ?? 0));
    const freedom = freedoms[i] ?? 0;
    sizes[freedom] = (sizes[freedom] ?? 0) + sum;
  }
}
