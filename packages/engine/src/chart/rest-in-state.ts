import { addElementForcesOfSides, type Element } from "../elements/element.ts";
import { eliminateDense, solveDense } from "../numerics/dense-ldlt.ts";
import { frontTree } from "../numerics/front-tree.ts";
import { factorise } from "../numerics/sparse-ldlt.ts";
import type { SparseFactor } from "../numerics/sparse-factor.ts";
import { recoverInner, reduceLoads } from "../numerics/sparse-solve.ts";
import { SOLUTION_ACCURACY } from "../numerics/tolerances.ts";
import type { IdleDirection } from "../analysis/idle-directions.ts";
import { numberFreedoms } from "../analysis/prepare.ts";
import type { LoadVector, Movement } from "../analysis/solve-movement.ts";
import { actingElements, heldFreedoms, type ContactState, type System } from "../analysis/system.ts";

/**
 * A building without one container in one state of its bearings, condensed to that container's bearing points. Any container on
 * these points is solved with it as the whole building would be. N, mm, radians.
 */
export class RestInState {
  readonly state: ContactState;
  readonly held: Uint8Array;
  readonly equationOf: Int32Array;
  readonly idle: readonly IdleDirection[];
  private readonly own: Int32Array;
  private readonly elements: readonly Element[];
  private readonly factor: SparseFactor;

  private constructor(
    own: Int32Array,
    state: ContactState,
    held: Uint8Array,
    numbered: Numbered,
    factor: SparseFactor,
  ) {
    this.own = own;
    this.state = state;
    this.held = held;
    this.factor = factor;
    this.elements = numbered.elements;
    this.equationOf = numbered.equationOf;
    this.idle = numbered.idle;
  }

  /**
   * `system` is without the container, `own` are the freedoms by which it is joined, ascending. Undefined where something in it
   * moves though these are held.
   */
  static of(system: System, own: Int32Array, state: ContactState): RestInState | undefined {
    const held = heldFreedoms(system, state);
    const retained = new Uint8Array(held.length);
    for (const freedom of own) retained[freedom] = 1;
    const numbered = numberFreedoms(system, actingElements(system, state), held, retained, frontTree);
    const factor = factorise(numbered.tree, numbered.sparse);
    return factor.loose.length > 0 ? undefined : new RestInState(own, state, held, numbered, factor);
  }

  /** With a container of this stiffness (global axes) under these loads on all. Undefined where it does not hold together. */
  solve(stiffness: Float64Array, loads: readonly LoadVector[]): Movement[] | undefined {
    const joint = this.joined(stiffness);
    if (joint === undefined) return undefined;
    const elements = [...this.elements, { freedoms: this.own, matrix: stiffness }];
    const sides = loads.length;
    const movement = new Float64Array(this.held.length * sides);
    loads.forEach(({ settlement }, s) => {
      for (let f = 0; f < this.held.length; f++) if (this.held[f]) movement[f * sides + s] = settlement[f] ?? 0;
    });
    let answered = answerOf(elements, movement, sides);
    for (let round = 0; round < MOST_ROUNDS; round++) {
      this.refine(joint, loads, movement, answered);
      answered = answerOf(elements, movement, sides);
      if (this.isBalanced(loads, answered)) break;
    }
    if (!this.isBalanced(loads, answered)) return undefined;
    return loads.map((_, s) => ({ movement: sideOf(movement, s, sides), answered: sideOf(answered, s, sides) }));
  }

  /** The container and what the rest answers at its points, factorised over those that are free. */
  private joined(stiffness: Float64Array): Joint | undefined {
    const { own, held, factor } = this;
    const size = own.length;
    const free = Int32Array.from(own.keys()).filter((k) => !held[own[k] ?? 0]);
    const matrix = new Float64Array(free.length * free.length);
    const scale = new Float64Array(free.length);
    free.forEach((row, i) => {
      free.forEach((column, j) => {
        const at = row * size + column;
        matrix[i * free.length + j] = (stiffness[at] ?? 0) + (factor.schur[at] ?? 0);
      });
      scale[i] = matrix[i * free.length + i] ?? 0;
    });
    return eliminateDense(matrix, free.length, free.length, scale) ? { free, matrix } : undefined;
  }

  /** Adds what the forces left over move. */
  private refine(joint: Joint, loads: readonly LoadVector[], movement: Float64Array, answered: Float64Array): void {
    const { equationOf, held, factor } = this;
    const [sides, { equations, eliminated }] = [loads.length, factor.tree];
    const x = new Float64Array(equations * sides);
    loads.forEach(({ forces }, s) => {
      for (let f = 0; f < equationOf.length; f++) {
        const equation = equationOf[f] ?? -1;
        if (equation >= 0 && !held[f]) x[equation * sides + s] = (forces[f] ?? 0) - (answered[f * sides + s] ?? 0);
      }
    });
    reduceLoads(factor, x, sides);
    this.moveOwn(joint, x.subarray(eliminated * sides), sides);
    recoverInner(factor, x, sides);
    for (let f = 0; f < equationOf.length; f++) {
      const equation = equationOf[f] ?? -1;
      if (equation < 0) continue;
      for (let s = 0; s < sides; s++)
        movement[f * sides + s] = (movement[f * sides + s] ?? 0) + (x[equation * sides + s] ?? 0);
    }
  }

  /** Forces at the container's points become their movements; those held stay. */
  private moveOwn({ free, matrix }: Joint, own: Float64Array, sides: number): void {
    const y = new Float64Array(free.length * sides);
    free.forEach((k, i) => y.set(own.subarray(k * sides, (k + 1) * sides), i * sides));
    solveDense(matrix, free.length, y, sides);
    own.fill(0);
    free.forEach((k, i) => own.set(y.subarray(i * sides, (i + 1) * sides), k * sides));
  }

  private isBalanced(loads: readonly LoadVector[], answered: Float64Array): boolean {
    const sides = loads.length;
    return loads.every(({ forces }, s) => {
      let [left, most] = [0, 0];
      for (let f = 0; f < this.held.length; f++) {
        const answer = answered[f * sides + s] ?? 0;
        most = Math.max(most, Math.abs(answer));
        if (!this.held[f] && (this.equationOf[f] ?? -1) >= 0)
          left = Math.max(left, Math.abs((forces[f] ?? 0) - answer));
      }
      return left <= BALANCE * most;
    });
  }
}

type Numbered = ReturnType<typeof numberFreedoms>;

/** Factorised stiffness on the free ones among the container's freedoms. */
type Joint = { readonly free: Int32Array; readonly matrix: Float64Array };

const MOST_ROUNDS = 4;
/** Movements are claimed to `SOLUTION_ACCURACY`; forces are to balance a thousand times better. */
const BALANCE = SOLUTION_ACCURACY / 1000;

function answerOf(elements: readonly Element[], movement: Float64Array, sides: number): Float64Array {
  const answered = new Float64Array(movement.length);
  for (const element of elements) addElementForcesOfSides(element, movement, answered, sides);
  return answered;
}

function sideOf(values: Float64Array, side: number, sides: number): Float64Array {
  const own = new Float64Array(values.length / sides);
  for (let f = 0; f < own.length; f++) own[f] = values[f * sides + side] ?? 0;
  return own;
}
