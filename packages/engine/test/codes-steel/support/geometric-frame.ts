import { Matrix, solve } from "ml-matrix";

/** A plane bar between two nodes with its compression, N; rigid along its axis by a large area. Lengths mm, MPa. */
export type PlaneBar = {
  readonly from: number;
  readonly to: number;
  readonly inertiaMm4: number;
  readonly compressionN?: number;
};
export type PlaneFrame = {
  readonly nodes: readonly (readonly [number, number])[];
  readonly bars: readonly PlaneBar[];
  /** Freedoms 3·node + 0 (x), 1 (y), 2 (turn) that are held. */
  readonly held: readonly number[];
};

export const E = 200_000;
const AREA_MM2 = 1e6;

/** Movements under forces on freedoms with elastic less geometric stiffness (cubic shapes): the second-order answer. */
export function secondOrder({ nodes, bars, held }: PlaneFrame, forces: Readonly<Record<number, number>>): number[] {
  const count = 3 * nodes.length;
  const stiffness = Matrix.zeros(count, count);
  for (const bar of bars) addBar(stiffness, nodes, bar);
  const free = Array.from({ length: count }, (_, n) => n).filter((n) => !held.includes(n));
  const load = Matrix.columnVector(free.map((n) => forces[n] ?? 0));
  const moved = solve(stiffness.selection(free, free), load).to1DArray();
  const all = Array.from({ length: count }, () => 0);
  free.forEach((n, k) => (all[n] = moved[k] ?? 0));
  return all;
}

function addBar(stiffness: Matrix, nodes: PlaneFrame["nodes"], { from, to, inertiaMm4, compressionN = 0 }: PlaneBar) {
  const [a, b] = [nodes[from], nodes[to]];
  if (a === undefined || b === undefined) throw new RangeError(`a bar from node ${from} to ${to} of ${nodes.length}`);
  const [dx, dy] = [b[0] - a[0], b[1] - a[1]];
  const l = Math.hypot(dx, dy);
  const [c, s] = [dx / l, dy / l];
  const [k, p, n] = [(E * inertiaMm4) / (l * l * l), compressionN / (30 * l), (E * AREA_MM2) / l];
  const bend = (elastic: number, geometric: number): number => elastic * k - geometric * p;
  const side = [
    [n, 0, 0, -n, 0, 0],
    [0, bend(12, 36), bend(6 * l, 3 * l), 0, -bend(12, 36), bend(6 * l, 3 * l)],
    [0, bend(6 * l, 3 * l), bend(4 * l * l, 4 * l * l), 0, -bend(6 * l, 3 * l), bend(2 * l * l, -l * l)],
    [-n, 0, 0, n, 0, 0],
    [0, -bend(12, 36), -bend(6 * l, 3 * l), 0, bend(12, 36), -bend(6 * l, 3 * l)],
    [0, bend(6 * l, 3 * l), bend(2 * l * l, -l * l), 0, -bend(6 * l, 3 * l), bend(4 * l * l, 4 * l * l)],
  ];
  const turn = new Matrix([
    [c, s, 0, 0, 0, 0],
    [-s, c, 0, 0, 0, 0],
    [0, 0, 1, 0, 0, 0],
    [0, 0, 0, c, s, 0],
    [0, 0, 0, -s, c, 0],
    [0, 0, 0, 0, 0, 1],
  ]);
  const global = turn.transpose().mmul(new Matrix(side)).mmul(turn);
  const places = [0, 1, 2].map((f) => 3 * from + f).concat([0, 1, 2].map((f) => 3 * to + f));
  places.forEach((i, r) => {
    places.forEach((j, q) => stiffness.set(i, j, stiffness.get(i, j) + global.get(r, q)));
  });
}
