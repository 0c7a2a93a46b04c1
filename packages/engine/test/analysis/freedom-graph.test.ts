import { describe, expect, it } from "vitest";
import { freedomGraph, nodeGraph } from "../../src/analysis/freedom-graph.ts";
import { freedomsOf, type Element } from "../../src/elements/element.ts";
import { nodeSpring } from "../../src/elements/spring.ts";

/** A part on nodes 0 and 1 that stands on node 2 by an upright spring. */
const part: Element = { freedoms: freedomsOf([0, 1]), matrix: new Float64Array(144) };
const upright = nodeSpring(1, 2, [0, 0, 1e6, 0, 0, 0]);
const elements = [part, upright];
const active = new Uint8Array(18).fill(1, 0, 12);
active[2 * 6 + 2] = 1;

describe("the graph by freedoms", () => {
  const graph = freedomGraph(elements, active);

  it("parts the freedoms of a node by the elements they belong to, and leaves out those without an equation", () => {
    expect([...graph.groupOf]).toEqual([0, 0, 0, 0, 0, 0, 1, 1, 2, 1, 1, 1, -1, -1, 3, -1, -1, -1]);
    expect([...graph.weights]).toEqual([6, 5, 1, 1]);
  });

  it("joins what an element joins", () => {
    expect(graph.cliques).toEqual([
      [0, 1, 2],
      [2, 3],
    ]);
    expect([...graph.retained]).toEqual([0, 0, 0, 0]);
  });

  it("counts elements on the same freedoms once", () => {
    expect(freedomGraph([...elements, upright], active).cliques).toEqual(graph.cliques);
  });
});

it("the graph by nodes has one vertex for each node and keeps those that are retained", () => {
  const graph = nodeGraph(elements, active, new Uint8Array(18).fill(1, 6, 12));
  expect([...graph.weights]).toEqual([6, 6, 1]);
  expect([...graph.retained]).toEqual([0, 1, 0]);
  expect(graph.cliques).toEqual([
    [0, 1],
    [1, 2],
  ]);
});

it("and parts a node of which only translations are retained", () => {
  const graph = nodeGraph(elements, active, new Uint8Array(18).fill(1, 6, 9));
  expect([...graph.groupOf]).toEqual([0, 0, 0, 0, 0, 0, 1, 1, 1, 2, 2, 2, -1, -1, 3, -1, -1, -1]);
  expect([...graph.retained]).toEqual([0, 1, 0, 0]);
  expect(graph.cliques).toEqual([
    [0, 1, 2],
    [1, 3],
  ]);
});
