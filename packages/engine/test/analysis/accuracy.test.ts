import { describe, expect, it } from "vitest";
import { stackedModel, stackedScheme } from "../../bench/support/stacked-building.ts";
import { bearingStates } from "../../src/analysis/bearing-states.ts";
import { buildingSystem, type BuildingSystem } from "../../src/analysis/building-system.ts";
import { ClosedCases } from "../../src/analysis/closed-cases.ts";
import { settleContact } from "../../src/analysis/contact.ts";
import { ownMovement } from "../../src/analysis/own-movement.ts";
import { prepare } from "../../src/analysis/prepare.ts";
import type { Prepared } from "../../src/analysis/prepared.ts";
import { allClosed, type ContactState } from "../../src/analysis/system.ts";
import { condensationCache } from "../../src/building.ts";
import type { Element } from "../../src/elements/element.ts";
import { recoverInner, reduceLoads, solveInPlace } from "../../src/numerics/sparse-solve.ts";

/**
 * The oracle: residuals and movements in twice the digits, by which a factorisation refines a solution to the last digit of
 * the matrices given (Wilkinson's refinement; error-free sum and product: Dekker, Numer. Math. 18 (1971), from memory).
 */
class Doubled {
  readonly high: Float64Array;
  readonly low: Float64Array;

  constructor(start: Float64Array) {
    this.high = start.slice();
    this.low = new Float64Array(start.length);
  }

  add(at: number, value: number): void {
    const before = this.high[at] ?? 0;
    const sum = before + value;
    const part = sum - before;
    this.low[at] = (this.low[at] ?? 0) + (before - (sum - part) + (value - part));
    this.high[at] = sum;
  }

  addProduct(at: number, a: number, b: number): void {
    const [a1, a2] = halves(a);
    const [b1, b2] = halves(b);
    const product = a * b;
    this.add(at, product);
    this.low[at] = (this.low[at] ?? 0) + (a1 * b1 - product + a1 * b2 + a2 * b1 + a2 * b2);
  }

  value(at: number): number {
    return (this.high[at] ?? 0) + (this.low[at] ?? 0);
  }
}

function halves(value: number): [number, number] {
  const spread = 134_217_729 * value; // 2²⁷ + 1
  const high = spread - (spread - value);
  return [high, value - high];
}

/** Loads less K·u. */
function unbalancedBy(elements: readonly Element[], movement: Doubled, loads: Float64Array): Doubled {
  const left = new Doubled(loads);
  for (const { freedoms, matrix } of elements)
    freedoms.forEach((row, i) =>
      freedoms.forEach((column, j) => {
        const k = matrix[i * freedoms.length + j] ?? 0;
        if (k === 0) return;
        left.addProduct(row, -k, movement.high[column] ?? 0);
        left.low[row] = (left.low[row] ?? 0) - k * (movement.low[column] ?? 0);
      }),
    );
  return left;
}

/** `solve` brings unbalanced forces by equation to movements by equation, in place. */
function refined(
  { elements, equationOf, equations }: { elements: readonly Element[]; equationOf: Int32Array; equations: number },
  start: Float64Array,
  loads: Float64Array,
  solve: (x: Float64Array) => void,
): Doubled {
  const movement = new Doubled(start);
  for (let step = 0; step < 5; step++) {
    const left = unbalancedBy(elements, movement, loads);
    const x = new Float64Array(equations);
    equationOf.forEach((equation, f) => equation >= 0 && (x[equation] = left.value(f)));
    solve(x);
    equationOf.forEach((equation, f) => equation >= 0 && movement.add(f, x[equation] ?? 0));
  }
  return movement;
}

/** The greatest difference, translations (forces) and rotations (moments) each over the largest of their kind. */
function apart(ours: Float64Array, theirs: Doubled, freedoms?: readonly number[]): number {
  const [most, off] = [
    [0, 0],
    [0, 0],
  ];
  ours.forEach((value, f) => {
    const kind = (freedoms?.[f] ?? f) % 6 < 3 ? 0 : 1;
    most[kind] = Math.max(most[kind] ?? 0, Math.abs(theirs.value(f)));
    off[kind] = Math.max(off[kind] ?? 0, Math.abs(value - (theirs.high[f] ?? NaN) - (theirs.low[f] ?? NaN)));
  });
  return Math.max(...off.map((value, kind) => (most[kind] === 0 ? value : value / (most[kind] ?? NaN))));
}

function buildingOf(count: number) {
  const model = stackedModel(stackedScheme(count));
  const assembly = buildingSystem(model, condensationCache(1e9));
  if (!assembly.stable) throw new Error("stands");
  const { building } = assembly;
  const closed = preparedIn(building, allClosed(building.frame.system));
  const cases = new ClosedCases(building, closed);
  const combos = Object.values(model.combos);
  const loads = combos.map((combo) => cases.loadsOf(combo));
  return { building, closed, loads, results: cases.movementsUnder(combos, loads) };
}

function preparedIn(building: BuildingSystem, state: ContactState): Prepared {
  const preparation = prepare(building.frame.system, state);
  if (!preparation.stable) throw new Error("stands");
  return preparation.prepared;
}

const stack = buildingOf(16);

describe("accuracy", () => {
  it("of a building's movements, bearings open or not, is 1e-11 of the largest, by refinement in twice the digits", () => {
    const { building, closed, loads, results } = stack;
    const { system } = building.frame;
    const outcomes = settleContact(system, closed, loads, results, bearingStates(system));
    let opened = 0;
    outcomes.forEach((outcome, n) => {
      const load = loads[n];
      if (!outcome.settled || load === undefined) throw new Error("settles");
      const { state } = outcome.prepared;
      const open = state.open.some((flag) => flag === 1);
      if (open) opened++;
      const own = open ? preparedIn(building, state) : closed;
      const graph = { elements: own.elements, equationOf: own.equationOf, equations: own.factor.tree.equations };
      const exact = refined(graph, outcome.result.movement, load.forces, (x) => solveInPlace(own.factor, x, 1));
      expect(apart(outcome.result.movement, exact)).toBeLessThan(1e-11);
    });
    expect(opened).toBeGreaterThan(0);
  });

  it("of a condensed container's answer is 1e-10 of the largest, 1e-5 where a jamb stands half a millimetre beside a cross member", () => {
    const bounds = { "unit-0001": 1e-10, "unit-0016": 1e-5 };
    for (const [id, bound] of Object.entries(bounds)) {
      const one = stack.building.unitById.get(id);
      if (one === undefined) throw new Error("is there");
      const { part, factor, equationOf, retained, freedoms: joined, stiffness } = one.condensed;
      const moved = ownMovement(one, stack.results[0]?.movement ?? new Float64Array());
      const start = new Float64Array(equationOf.length);
      const freedoms = Array.from(joined, (freedom) => (retained[Math.floor(freedom / 6)] ?? 0) * 6 + (freedom % 6));
      freedoms.forEach((freedom, k) => (start[freedom] = moved[k] ?? 0));
      const none = new Float64Array(start.length);
      const graph = { elements: part.elements, equationOf, equations: factor.tree.equations };
      const inside = refined(graph, start, none, (x) => {
        reduceLoads(factor, x, 1);
        x.fill(0, factor.tree.eliminated); // what is retained stays where it is
        recoverInner(factor, x, 1);
      });
      const answered = unbalancedBy(part.elements, inside, none);
      const exact = new Doubled(Float64Array.from(freedoms, (freedom) => -answered.value(freedom)));
      const ours = Float64Array.from(freedoms, (_, i) =>
        freedoms.reduce((sum, __, j) => sum + (stiffness[i * freedoms.length + j] ?? 0) * (moved[j] ?? 0), 0),
      );
      expect(apart(ours, exact, freedoms)).toBeLessThan(bound);
    }
  });
});
