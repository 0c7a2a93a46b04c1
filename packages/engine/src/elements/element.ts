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
  /** True for one that resists every movement of either of its nodes while the other is held. */
  readonly holdsNodes?: boolean;
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
  let s = 0;
  for (; s + 3 < count; s += 4) addToFourSides(matrix, freedoms, u, s, count, forces);
  if (s + 2 < count) addToLastThree(matrix, freedoms, u, s, count, forces);
  else for (; s < count; s++) addToOneSide(matrix, freedoms, u, s, count, forces);
}

const SIDES = new Scratch();

/** Two rows for four sides: each loaded number serves two or four; each sum has one order, among other sides or alone. */
function addToFourSides(
  matrix: Float64Array,
  freedoms: Int32Array,
  u: Float64Array,
  side: number,
  count: number,
  forces: Float64Array,
): void {
  const size = freedoms.length;
  let i = 0;
  for (; i + 1 < size; i += 2) addTwoRows(matrix, freedoms, i, u, side, count, forces);
  for (; i < size; i++) for (let s = side; s < side + 4; s++) addRow(matrix, freedoms, i, u, s, count, forces);
}

function addRow(
  matrix: Float64Array,
  freedoms: Int32Array,
  i: number,
  u: Float64Array,
  side: number,
  count: number,
  forces: Float64Array,
): void {
  const size = freedoms.length;
  let sum = 0;
  for (let j = 0, at = side; j < size; j++, at += count) sum += (matrix[i * size + j] ?? 0) * (u[at] ?? 0);
  addAt(forces, (freedoms[i] ?? 0) * count + side, sum);
}

function addTwoRows(
  matrix: Float64Array,
  freedoms: Int32Array,
  i: number,
  u: Float64Array,
  side: number,
  count: number,
  forces: Float64Array,
): void {
  const size = freedoms.length;
  let a0 = 0;
  let a1 = 0;
  let a2 = 0;
  let a3 = 0;
  let b0 = 0;
  let b1 = 0;
  let b2 = 0;
  let b3 = 0;
  for (let j = 0, k = i * size, at = side; j < size; j++, k++, at += count) {
    const a = matrix[k] ?? 0;
    const b = matrix[k + size] ?? 0;
    const u0 = u[at] ?? 0;
    const u1 = u[at + 1] ?? 0;
    const u2 = u[at + 2] ?? 0;
    const u3 = u[at + 3] ?? 0;
    a0 += a * u0;
    a1 += a * u1;
    a2 += a * u2;
    a3 += a * u3;
    b0 += b * u0;
    b1 += b * u1;
    b2 += b * u2;
    b3 += b * u3;
  }
  const first = (freedoms[i] ?? 0) * count + side;
  const second = (freedoms[i + 1] ?? 0) * count + side;
  addAt(forces, first, a0);
  addAt(forces, first + 1, a1);
  addAt(forces, first + 2, a2);
  addAt(forces, first + 3, a3);
  addAt(forces, second, b0);
  addAt(forces, second + 1, b1);
  addAt(forces, second + 2, b2);
  addAt(forces, second + 3, b3);
}

/** Two rows for three sides. */
function addToLastThree(
  matrix: Float64Array,
  freedoms: Int32Array,
  u: Float64Array,
  side: number,
  count: number,
  forces: Float64Array,
): void {
  const size = freedoms.length;
  let i = 0;
  for (; i + 1 < size; i += 2) {
    let a0 = 0;
    let a1 = 0;
    let a2 = 0;
    let b0 = 0;
    let b1 = 0;
    let b2 = 0;
    for (let j = 0, k = i * size, at = side; j < size; j++, k++, at += count) {
      const a = matrix[k] ?? 0;
      const b = matrix[k + size] ?? 0;
      const u0 = u[at] ?? 0;
      const u1 = u[at + 1] ?? 0;
      const u2 = u[at + 2] ?? 0;
      a0 += a * u0;
      a1 += a * u1;
      a2 += a * u2;
      b0 += b * u0;
      b1 += b * u1;
      b2 += b * u2;
    }
    const first = (freedoms[i] ?? 0) * count + side;
    const second = (freedoms[i + 1] ?? 0) * count + side;
    addAt(forces, first, a0);
    addAt(forces, first + 1, a1);
    addAt(forces, first + 2, a2);
    addAt(forces, second, b0);
    addAt(forces, second + 1, b1);
    addAt(forces, second + 2, b2);
  }
  for (; i < size; i++) for (let s = side; s < side + 3; s++) addRow(matrix, freedoms, i, u, s, count, forces);
}

/** Four rows at a time. */
function addToOneSide(
  matrix: Float64Array,
  freedoms: Int32Array,
  u: Float64Array,
  side: number,
  count: number,
  forces: Float64Array,
): void {
  const size = freedoms.length;
  let i = 0;
  for (; i + 3 < size; i += 4) {
    const a = i * size;
    let s0 = 0;
    let s1 = 0;
    let s2 = 0;
    let s3 = 0;
    for (let j = 0, at = side; j < size; j++, at += count) {
      const value = u[at] ?? 0;
      s0 += (matrix[a + j] ?? 0) * value;
      s1 += (matrix[a + size + j] ?? 0) * value;
      s2 += (matrix[a + 2 * size + j] ?? 0) * value;
      s3 += (matrix[a + 3 * size + j] ?? 0) * value;
    }
    addAt(forces, (freedoms[i] ?? 0) * count + side, s0);
    addAt(forces, (freedoms[i + 1] ?? 0) * count + side, s1);
    addAt(forces, (freedoms[i + 2] ?? 0) * count + side, s2);
    addAt(forces, (freedoms[i + 3] ?? 0) * count + side, s3);
  }
  for (; i < size; i++) addRow(matrix, freedoms, i, u, side, count, forces);
}

function addAt(forces: Float64Array, at: number, value: number): void {
  forces[at] = (forces[at] ?? 0) + value;
}

/** The force with which the element answers a movement on one of its freedoms. */
export function elementForceOn({ freedoms, matrix }: Element, freedom: number, movement: Float64Array): number {
  const size = freedoms.length;
  const row = freedoms.indexOf(freedom) * size;
  let sum = 0;
  for (let j = 0; j < size; j++) sum += (matrix[row + j] ?? 0) * (movement[freedoms[j] ?? 0] ?? 0);
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
