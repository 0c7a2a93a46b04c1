import { integerRoom } from "../numerics/number-room.ts";
import { Scratch } from "../numerics/scratch.ts";

/**
 * What every element is to the solution: the freedoms it joins (6·node + 0…5 for ux uy uz rx ry rz, global axes) and its
 * symmetric stiffness on them, full, row-major, N/mm and N·mm/rad.
 */
export interface Element {
  readonly freedoms: Int32Array;
  readonly matrix: Float64Array;
  /** False for one that keeps the place of an element that does nothing now; its stiffness is zero. */
  readonly acts?: boolean;
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

/** `addElementForces` for several movements at once, freedom by freedom: movement[freedom·count + side]. */
export function addElementForcesOfSides(
  { freedoms, matrix }: Element,
  movement: Float64Array,
  forces: Float64Array,
  count: number,
): void {
  const size = freedoms.length;
  const u = SIDES.room(size * count);
  for (let j = 0; j < size; j++) {
    const source = (freedoms[j] ?? 0) * count;
    for (let s = 0; s < count; s++) u[j * count + s] = movement[source + s] ?? 0;
  }
  for (let i = 0; i < size; i++) {
    const target = (freedoms[i] ?? 0) * count;
    let s = 0;
    for (; s + 1 < count; s += 2) addRowToTwo(matrix, i * size, size, u, s, count, forces, target + s);
    if (s < count) forces[target + s] = (forces[target + s] ?? 0) + rowTimes(matrix, i * size, size, u, s, count);
  }
}

const SIDES = new Scratch();

function addRowToTwo(
  matrix: Float64Array,
  row: number,
  size: number,
  u: Float64Array,
  side: number,
  count: number,
  forces: Float64Array,
  target: number,
): void {
  let first = 0;
  let second = 0;
  for (let j = 0, at = side; j < size; j++, at += count) {
    const k = matrix[row + j] ?? 0;
    first += k * (u[at] ?? 0);
    second += k * (u[at + 1] ?? 0);
  }
  forces[target] = (forces[target] ?? 0) + first;
  forces[target + 1] = (forces[target + 1] ?? 0) + second;
}

function rowTimes(
  matrix: Float64Array,
  row: number,
  size: number,
  u: Float64Array,
  side: number,
  count: number,
): number {
  let sum = 0;
  for (let j = 0, at = side; j < size; j++, at += count) sum += (matrix[row + j] ?? 0) * (u[at] ?? 0);
  return sum;
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
