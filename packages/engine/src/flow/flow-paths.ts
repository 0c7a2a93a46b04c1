import { OUTSIDE, OUTSIDE_LEFT, passages, type Bank, type Outside, type Passage } from "./banks.ts";
import type { FlowEdge, Port, VerticalFlow } from "./vertical-flow.ts";
import { withoutCircles } from "./without-circles.ts";

/** One tube of the flow: the same force from where it comes in to where it leaves. */
export type FlowPath = { readonly forceN: number; readonly nodes: readonly number[] };

/** Of the greatest force, what counts as rounding of a solution: thinner tubes are not followed. */
const LOST_IN_ROUNDING = 1e-9;

/**
 * The flow taken apart into tubes, none across another: each point hands on what comes in to the sides next to it, so the
 * tubes are the streamlines of the flow and together carry all of it. What turns in a circle comes from nowhere and goes
 * nowhere: it is taken off first, or tubes would wind about it for ever. Those of one point stand in order, from the left of what leaves it.
 */
export function flowPaths(flow: VerticalFlow): FlowPath[] {
  const tubes = new Tubes(flow);
  return flow.nodes.flatMap((_, node) => tubes.from(node));
}

type Tube = {
  readonly node: number;
  readonly by: Bank["port"];
  readonly fromN: number;
  readonly toN: number;
  readonly way: Way;
};
type Way = { readonly node: number; readonly before: Way | null };

class Tubes {
  private readonly flow: VerticalFlow;
  /** By point and side: the edge there, and whether it comes in. */
  private readonly edgeAt: (FlowEdge | undefined)[];
  /** By point and the side they come in by. */
  private readonly known: (readonly Passage[] | undefined)[];
  private readonly leastN: number;

  constructor(flow: VerticalFlow) {
    this.flow = flow;
    this.edgeAt = Array.from({ length: flow.nodes.length * SIDES });
    this.known = Array.from({ length: flow.nodes.length * ALL_SIDES });
    this.leastN = LOST_IN_ROUNDING * flow.edges.reduce((most, { forceN }) => Math.max(most, forceN), 0);
    for (const edge of withoutCircles(flow.nodes.length, flow.edges)) {
      this.edgeAt[edge.from * SIDES + edge.port] = edge;
      this.edgeAt[edge.to * SIDES + opposite(edge.port)] = edge;
    }
  }

  from(source: number): FlowPath[] {
    const paths: FlowPath[] = [];
    const waiting = this.banksOf(source).flatMap(({ port, comesIn, forceN }): Tube[] =>
      isOutside(port) && comesIn
        ? [{ node: source, by: port, fromN: 0, toN: forceN, way: { node: source, before: null } }]
        : [],
    );
    for (let tube = waiting.pop(); tube !== undefined; tube = waiting.pop()) this.handOn(tube, waiting, paths);
    return paths;
  }

  /** The parts a tube falls into at a point: further tubes, the left one to be followed first, and ends. */
  private handOn({ node, by, fromN, toN, way }: Tube, waiting: Tube[], paths: FlowPath[]): void {
    const found = this.passagesBy(node, by);
    for (let n = found.length - 1; n >= 0; n--) {
      const passage = found[n];
      if (passage === undefined || passage.fromN >= toN || passage.toN <= fromN) continue;
      const [from, to] = [Math.max(fromN, passage.fromN), Math.min(toN, passage.toN)];
      if (to - from <= this.leastN) continue;
      if (isOutside(passage.out)) {
        paths.push({ forceN: to - from, nodes: nodesOf(way) });
        continue;
      }
      const edge = this.edgeAt[node * SIDES + passage.out];
      if (edge === undefined) throw new Error("a passage leads along an edge");
      const moved = passage.outFromN - passage.fromN;
      const end: Way = { node: edge.to, before: way };
      waiting.push({ node: edge.to, by: opposite(passage.out), fromN: from + moved, toN: to + moved, way: end });
    }
  }

  /** From the left on. */
  private passagesBy(node: number, by: Bank["port"]): readonly Passage[] {
    const at = node * ALL_SIDES + by;
    const known = this.known[at];
    if (known !== undefined) return known;
    const all = passages(this.banksOf(node));
    for (const port of [...PORTS, OUTSIDE, OUTSIDE_LEFT])
      this.known[node * ALL_SIDES + port] = all
        .filter((passage) => passage.by === port)
        .toSorted((a, b) => a.fromN - b.fromN);
    return this.known[at] ?? [];
  }

  private banksOf(node: number): Bank[] {
    const sourceN = this.flow.sourcesN[node] ?? 0;
    const banks = PORTS.flatMap((port): Bank[] => {
      const edge = this.edgeAt[node * SIDES + port];
      return edge === undefined ? [] : [{ port, comesIn: edge.to === node, forceN: edge.forceN }];
    });
    if (Math.abs(sourceN) <= this.leastN) return banks;
    const outside = (port: Outside, part: number): Bank => {
      return { port, comesIn: sourceN > 0, forceN: part * Math.abs(sourceN) };
    };
    const [above, below] = [UP, DOWN].map((side) => banks.some(({ port }) => port === side));
    if (above === true && below === true) {
      return [...banks.toSpliced(1, 0, outside(OUTSIDE, HALF)), outside(OUTSIDE_LEFT, HALF)];
    }
    // from above where nothing stands above, else from below
    return banks.toSpliced(above === true ? banks.filter(({ port }) => port < DOWN).length : 0, 0, outside(OUTSIDE, 1));
  }
}

const HALF = 0.5;
const isOutside = (port: Bank["port"]): port is Outside => port === OUTSIDE || port === OUTSIDE_LEFT;

const ALL_SIDES = 6;
const SIDES = 4;
const UP = 0;
const DOWN = 2;
const PORTS: readonly Port[] = [0, 1, 2, 3];
const OPPOSITE = { 0: 2, 1: 3, 2: 0, 3: 1 } as const;
const opposite = (port: Port): Port => OPPOSITE[port];

function nodesOf(way: Way): number[] {
  const nodes: number[] = [];
  for (let at: Way | null = way; at !== null; at = at.before) nodes.push(at.node);
  return nodes.reverse();
}
