import { describe, expect, it } from "vitest";
import fc from "fast-check";
import { KnownFronts } from "../../src/numerics/known-fronts.ts";
import { factorise } from "../../src/numerics/sparse-ldlt.ts";
import type { SparseFactor } from "../../src/numerics/sparse-factor.ts";
import { build, network } from "./random-network.ts";

const settings = { seed: 20260101, numRuns: 150 };
const ROOM = 1e8;

function expectSame(ours: SparseFactor, theirs: SparseFactor): void {
  expect(ours.panels).toEqual(theirs.panels);
  expect(ours.diagonal).toEqual(theirs.diagonal);
  expect(ours.schur).toEqual(theirs.schur);
}

describe("fronts known by what went into them", () => {
  it("give the bits of a factorisation from nothing, whatever was factorised before", () => {
    const known = new KnownFronts(ROOM);
    fc.assert(
      fc.property(network, fc.nat(), (net, pick) => {
        const { tree, elements } = build(net);
        const changed = pick % elements.length;
        const after = elements.map((element, n) =>
          n === changed ? { ...element, matrix: element.matrix.map((value) => value * 1.5) } : element,
        );
        for (const now of [elements, after, elements]) expectSame(known.factorise(tree, now), factorise(tree, now));
      }),
      settings,
    );
  });

  it("are shared as far as the change of one element does not reach", () => {
    const chain = chainOf(40);
    const known = new KnownFronts(ROOM);
    const first = known.factorise(chain.tree, chain.elements);
    const after = chain.elements.map((element, n) => (n === 3 ? { ...element, matrix: stiff(7) } : element));
    const second = known.factorise(chain.tree, after);
    const shared = first.panels.filter((panel, n) => panel.length > 0 && panel === second.panels[n]).length;
    expect(shared).toBeGreaterThan(0);
    expect(shared).toBeLessThan(first.panels.length);
    expectSame(second, factorise(chain.tree, after));
  });

  it("keep within their room", () => {
    const { tree, elements } = chainOf(40);
    const known = new KnownFronts(0);
    const first = known.factorise(tree, elements);
    const second = known.factorise(tree, elements);
    expect(first.panels.some((panel, n) => panel.length > 0 && panel === second.panels[n])).toBe(false);
    expectSame(second, first);
  });

  it("are not kept where a small pivot is trusted: whether it may be is not theirs to say", () => {
    const { tree, elements } = chainOf(2, 1e-12);
    const known = new KnownFronts(ROOM);
    const { loose } = known.factorise(tree, elements);
    expect(loose).toHaveLength(1);
    expect(known.factorise(tree, elements, new Set(loose)).loose).toHaveLength(0);
    expect(known.factorise(tree, elements).loose).toEqual(loose);
  });
});

const stiff = (k: number): Float64Array => Float64Array.of(k, -k, -k, k);

/** Springs of 1 in a row, held at its first node by one of `ground`. */
function chainOf(nodes: number, ground = 1) {
  const weights = new Int32Array(nodes).fill(1);
  const cliques = [[0], ...Array.from({ length: nodes - 1 }, (_, n) => [n, n + 1])];
  const matrices = [Float64Array.of(ground), ...Array.from({ length: nodes - 1 }, () => stiff(1))];
  return build({ weights, cliques, matrices, retained: new Uint8Array(nodes) });
}
