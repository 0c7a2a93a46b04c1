import fc from "fast-check";
import { describe, expect, it } from "vitest";
import type { FlowEdge } from "../../src/flow/vertical-flow.ts";
import { withoutCircles } from "../../src/flow/without-circles.ts";

const edge = (from: number, to: number, forceN: number): FlowEdge => ({ from, to, forceN, port: 0, wall: null });

const netInto = (nodes: number, edges: readonly FlowEdge[]): number[] => {
  const net = Array.from({ length: nodes }, () => 0);
  for (const { from, to, forceN } of edges) {
    net[from] = (net[from] ?? 0) - forceN;
    net[to] = (net[to] ?? 0) + forceN;
  }
  return net;
};

/** Taking away points nothing leads to, one after the other, ends with none left: Kahn's test. */
function hasCircle(nodes: number, edges: readonly FlowEdge[]): boolean {
  const left = new Set(Array.from({ length: nodes }, (_, node) => node));
  for (;;) {
    const free = [...left].filter((node) => !edges.some(({ from, to }) => to === node && left.has(from)));
    if (free.length === 0) return left.size > 0;
    for (const node of free) left.delete(node);
  }
}

describe("withoutCircles", () => {
  // By hand: 3 N come from 4 over 0 and 1 to 5; 10 N turn round 0, 1, 2, 3.
  it("leaves what goes through, and nothing of what turns", () => {
    const flow = [edge(4, 0, 3), edge(0, 1, 13), edge(1, 2, 10), edge(2, 3, 10), edge(3, 0, 10), edge(1, 5, 3)];
    expect(withoutCircles(6, flow)).toEqual([edge(4, 0, 3), edge(0, 1, 3), edge(1, 5, 3)]);
  });

  it("has no circle left, and every point gives and takes as before", () => {
    const nodes = 7;
    const edges = fc.array(
      fc.record({
        from: fc.nat(nodes - 1),
        step: fc.integer({ min: 1, max: nodes - 1 }),
        forceN: fc.integer({ min: 1, max: 9 }),
      }),
      { maxLength: 25 },
    );
    fc.assert(
      fc.property(edges, (drawn) => {
        const flow = drawn.map(({ from, step, forceN }) => edge(from, (from + step) % nodes, forceN));
        const left = withoutCircles(nodes, flow);
        expect(hasCircle(nodes, left)).toBe(false);
        expect(netInto(nodes, left)).toEqual(netInto(nodes, flow));
      }),
      { seed: 20261127, numRuns: 500 },
    );
  });
});
