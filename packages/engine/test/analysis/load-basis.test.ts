import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { ARM_MM, loadBasis, sharesUnder, type LoadBasis } from "../../src/analysis/load-basis.ts";
import type { ModelCase, Six, Triple } from "../../src/model/analytical-model.ts";

const lines = ["rail", "cross", "header", "sill"];
const nodes = ["a", "b", "c"];
const number = fc.double({ min: -1e4, max: 1e4, noNaN: true });
const triple = fc.tuple(number, number, number);

/** What presses on a few faces at once, each as one pattern of lines and nodes. */
const pattern = fc.record({
  beam_udl: fc.array(fc.record({ beam: fc.constantFrom(...lines), q: triple }), { minLength: 1, maxLength: 4 }),
  nodal: fc.array(
    fc.record({ node: fc.constantFrom(...nodes), F: fc.tuple(number, number, number, number, number, number) }),
    {
      maxLength: 3,
    },
  ),
});

type Sums = ReadonlyMap<string, readonly number[]>;

/** Every component by what it acts on. */
function sumsOf(parts: readonly (readonly [ModelCase, number])[]): Sums {
  const sums = new Map<string, number[]>();
  const add = (name: string, values: Triple | Six, factor: number): void => {
    const known = sums.get(name) ?? values.map(() => 0);
    sums.set(
      name,
      values.map((value, c) => (known[c] ?? 0) + factor * value),
    );
  };
  for (const [{ beam_udl = [], nodal = [] }, factor] of parts) {
    for (const { beam, q } of beam_udl) add(beam, q, factor);
    for (const { node, F } of nodal) add(node, F, factor);
  }
  return sums;
}

/** Moments stand as forces at an arm. */
function inCase({ loads, slots }: LoadBasis, shares: Float64Array): Sums {
  const sum = (slot: number): number =>
    loads.reduce((all, load, k) => all + (load[slot] ?? NaN) * (shares[k] ?? NaN), 0);
  return new Map([
    ...[...slots.lines].map(([line, at]) => [line, [0, 1, 2].map((c) => sum(at + c))] as const),
    ...[...slots.nodes].map(
      ([node, at]) => [node, [0, 1, 2, 3, 4, 5].map((c) => sum(at + c) * (c < 3 ? 1 : ARM_MM))] as const,
    ),
  ]);
}

function expectSame(ours: Sums, theirs: Sums, most: number): void {
  for (const [name, values] of theirs)
    values.forEach((value, c) =>
      expect(Math.abs((ours.get(name)?.[c] ?? 0) - value), `${name} ${c}`).toBeLessThan(1e-9 * most),
    );
}

const largest = (sums: Sums): number => Math.max(1, ...[...sums.values()].flat().map(Math.abs));

describe("loads of a container as sums of few", () => {
  it("give back every case and every combination, with no more loads than the cases are made of", () => {
    fc.assert(
      fc.property(
        fc.array(pattern, { minLength: 1, maxLength: 3 }),
        fc.array(fc.array(fc.integer({ min: -3, max: 3 }), { minLength: 3, maxLength: 3 }), {
          minLength: 1,
          maxLength: 12,
        }),
        fc.array(fc.double({ min: -2, max: 2, noNaN: true }), { minLength: 12, maxLength: 12 }),
        (patterns, mixes, factors) => {
          const parts = mixes.map((mix) => patterns.map((one, n) => [one, mix[n] ?? 0] as const));
          const cases = Object.fromEntries(parts.map((part, n) => [`case ${n}`, caseOf(sumsOf(part))]));
          const basis = loadBasis(cases);
          expect(basis.loads.length).toBeLessThanOrEqual(patterns.length);
          parts.forEach((part, n) => {
            const theirs = sumsOf(part);
            expectSame(inCase(basis, basis.shares.get(`case ${n}`) ?? new Float64Array()), theirs, largest(theirs));
          });
          const combo = Object.fromEntries(parts.map((_, n) => [`case ${n}`, factors[n] ?? 0]));
          const all = sumsOf(Object.entries(combo).map(([name, factor]) => [cases[name] ?? {}, factor]));
          const sizes = parts.map((part, n) => Math.abs(factors[n] ?? 0) * largest(sumsOf(part)));
          expectSame(
            inCase(basis, sharesUnder(basis, combo)),
            all,
            sizes.reduce((sum, size) => sum + size, 1),
          );
        },
      ),
      { seed: 20261127, numRuns: 200 },
    );
  });

  it("are none where nothing loads it, and a case it does not know adds nothing", () => {
    const basis = loadBasis({ calm: {} });
    expect(basis.loads).toEqual([]);
    expect([...sharesUnder(basis, { calm: 1, elsewhere: 2 })]).toEqual([]);
  });
});

function caseOf(sums: Sums): ModelCase {
  return {
    beam_udl: [...sums].flatMap(([beam, [x = 0, y = 0, z = 0]]) =>
      lines.includes(beam) ? [{ beam, q: [x, y, z] as const }] : [],
    ),
    nodal: [...sums].flatMap(([node, [a = 0, b = 0, c = 0, d = 0, e = 0, f = 0]]) =>
      nodes.includes(node) ? [{ node, F: [a, b, c, d, e, f] as const }] : [],
    ),
  };
}
