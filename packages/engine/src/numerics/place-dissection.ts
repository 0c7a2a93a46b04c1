import { eliminationOrder, type EliminationStep, type NodeGraph } from "./elimination-order.ts";
import type { Vector } from "./vector.ts";

/**
 * Order of work by nested dissection of a long part: it is halved across its length again and again; of the nodes in one half
 * those joined to the other wait until both are done. What is left in a short stretch is ordered by degree.
 * Source: George, SIAM J. Numer. Anal. 10 (1973) (from memory).
 * Where nodes are added or moved, only the stretch around them is ordered anew: the rest keeps its steps, so that their work can
 * be kept (`known-fronts.ts`). `places` are those of the graph's nodes; `orderOf` may know the order of a stretch.
 */
export function placeDissection(
  graph: NodeGraph,
  places: readonly Vector[],
  orderOf: (graph: NodeGraph) => readonly EliminationStep[] = eliminationOrder,
): EliminationStep[] {
  const nodes: number[] = [];
  for (let node = 0; node < graph.weights.length; node++)
    if (!graph.retained[node] && (graph.weights[node] ?? 0) > 0) nodes.push(node);
  nodes.sort((a, b) => byPlace(places[a], places[b]) || a - b);
  const axis = longestOf(nodes, places);
  const along = new Float64Array(places.length);
  for (let node = 0; node < along.length; node++) along[node] = places[node]?.[axis] ?? 0;
  const dissection = new Dissection(graph, along, orderOf);
  dissection.take(
    nodes,
    graph.cliques,
    stretchOf(nodes, (node) => along[node] ?? 0),
  );
  return withBoundaries(dissection.groups, graph);
}

interface Stretch {
  readonly low: number;
  readonly high: number;
}

/** Unknowns in a stretch that is not halved any more (measured: in larger ones too much is worked anew). */
const SMALL = 150;
/** Nodes in a stretch of this length, mm, are not told apart. */
const ONE_PLACE_MM = 1;

type Cliques = readonly (readonly number[])[];

class Dissection {
  /** Nodes taken out together, in order. */
  readonly groups: (readonly number[])[] = [];
  private readonly graph: NodeGraph;
  private readonly along: Float64Array;
  private readonly orderOf: (graph: NodeGraph) => readonly EliminationStep[];
  /** Of each node: where it stands to the cut at hand. */
  private readonly side: Uint8Array;
  /** Of each node: 1 while it is known to be joined across the cut at hand. */
  private readonly joins: Uint8Array;
  /** Of each node: its number in the stretch at hand, −1 outside. */
  private readonly local: Int32Array;

  constructor(graph: NodeGraph, along: Float64Array, orderOf: (graph: NodeGraph) => readonly EliminationStep[]) {
    this.graph = graph;
    this.along = along;
    this.orderOf = orderOf;
    this.side = new Uint8Array(graph.weights.length);
    this.joins = new Uint8Array(graph.weights.length);
    this.local = new Int32Array(graph.weights.length).fill(-1);
  }

  /** `cliques` are all that reach these nodes. */
  take(nodes: readonly number[], cliques: Cliques, { low, high }: Stretch): void {
    if (nodes.length === 0) return;
    if (this.weightOf(nodes) <= SMALL || high - low < ONE_PLACE_MM) this.order(nodes, cliques);
    else this.halve(nodes, cliques, low, (low + high) / 2, high);
  }

  private halve(nodes: readonly number[], cliques: Cliques, low: number, middle: number, high: number): void {
    const { side } = this;
    for (const node of nodes) side[node] = (this.along[node] ?? 0) < middle ? BEFORE : BEHIND;
    const waiting = this.waiting(nodes, cliques);
    for (const node of waiting) side[node] = ELSEWHERE;
    const before = this.half(nodes, cliques, BEFORE);
    const behind = this.half(nodes, cliques, BEHIND);
    for (const node of nodes) side[node] = ELSEWHERE;
    this.take(before.nodes, before.cliques, { low, high: middle });
    this.take(behind.nodes, behind.cliques, { low: middle, high });
    if (waiting.length > 0) this.groups.push(waiting);
  }

  /** Of the nodes of cliques that stand on both sides of the cut, those of the lighter side. */
  private waiting(nodes: readonly number[], cliques: Cliques): readonly number[] {
    const { side, joins } = this;
    for (const clique of cliques) if (this.reach(clique) === (BEFORE | BEHIND)) flag(clique, joins, 1);
    const before: number[] = [];
    const behind: number[] = [];
    for (const node of nodes) if (joins[node]) (side[node] === BEFORE ? before : behind).push(node);
    for (const clique of cliques) flag(clique, joins, 0);
    return this.weightOf(before) < this.weightOf(behind) ? before : behind;
  }

  private half(nodes: readonly number[], cliques: Cliques, half: number) {
    const { side } = this;
    return {
      nodes: nodes.filter((node) => side[node] === half),
      cliques: cliques.filter((clique) => this.reach(clique) & half),
    };
  }

  /** The sides of the cut on which nodes of the clique stand, one bit each. */
  private reach(clique: readonly number[]): number {
    let sides = ELSEWHERE;
    for (let n = 0; n < clique.length; n++) sides |= this.side[clique[n] ?? 0] ?? 0;
    return sides;
  }

  /** By degree, everything around the stretch waiting. */
  private order(nodes: readonly number[], cliques: Cliques): void {
    const { local, graph } = this;
    const all = [...nodes];
    for (let n = 0; n < nodes.length; n++) local[nodes[n] ?? 0] = n;
    const own = cliques.map((clique) => {
      for (let n = 0; n < clique.length; n++) {
        const node = clique[n] ?? 0;
        if ((local[node] ?? -1) < 0) local[node] = all.push(node) - 1;
        NUMBERS[n] = local[node] ?? -1;
      }
      return NUMBERS.slice(0, clique.length);
    });
    const weights = new Int32Array(all.length);
    for (let n = 0; n < all.length; n++) {
      const node = all[n] ?? 0;
      weights[n] = graph.weights[node] ?? 0;
      local[node] = -1;
    }
    const steps = this.orderOf({ weights, cliques: own, retained: new Uint8Array(all.length).fill(1, nodes.length) });
    for (const { pivots } of steps) this.groups.push(pivots.map((n) => all[n] ?? -1));
  }

  private weightOf(nodes: readonly number[]): number {
    let sum = 0;
    for (const node of nodes) sum += this.graph.weights[node] ?? 0;
    return sum;
  }
}

/** Those of the clique at hand; a list grown number by number takes four times the room (measured). */
const NUMBERS: number[] = [];

function flag(nodes: readonly number[], flags: Uint8Array, value: 0 | 1): void {
  for (let n = 0; n < nodes.length; n++) flags[nodes[n] ?? 0] = value;
}

const ELSEWHERE = 0;
const BEFORE = 1;
const BEHIND = 2;

function byPlace(a: Vector | undefined, b: Vector | undefined): number {
  if (a === undefined || b === undefined) return 0;
  return a[0] - b[0] || a[1] - b[1] || a[2] - b[2];
}

/** The direction in which the places spread most. */
function longestOf(nodes: readonly number[], places: readonly Vector[]): 0 | 1 | 2 {
  const spread = ([0, 1, 2] as const).map((c) => {
    const { low, high } = stretchOf(nodes, (node) => places[node]?.[c] ?? 0);
    return high - low;
  });
  const [x = 0, y = 0, z = 0] = spread;
  if (x >= y && x >= z) return 0;
  return y >= z ? 1 : 2;
}

function stretchOf(nodes: readonly number[], at: (node: number) => number): Stretch {
  let low = Infinity;
  let high = -Infinity;
  for (const node of nodes) {
    low = Math.min(low, at(node));
    high = Math.max(high, at(node));
  }
  return { low, high };
}

/** The nodes each group is still joined to when it is taken out: by its own cliques and by what the groups before left. */
function withBoundaries(groups: readonly (readonly number[])[], { weights, cliques }: NodeGraph): EliminationStep[] {
  const groupOf = new Int32Array(weights.length).fill(groups.length);
  groups.forEach((group, g) => group.forEach((node) => (groupOf[node] = g)));
  const joined = groups.map((): (readonly number[])[] => []);
  const wait = (nodes: readonly number[]): void => {
    let first = groups.length;
    for (let n = 0; n < nodes.length; n++) first = Math.min(first, groupOf[nodes[n] ?? 0] ?? first);
    joined[first]?.push(nodes);
  };
  cliques.forEach(wait);
  const seen = new Int32Array(weights.length).fill(-1);
  return groups.map((pivots, g) => {
    for (const node of pivots) seen[node] = g;
    const boundary: number[] = [];
    for (const nodes of joined[g] ?? [])
      for (let n = 0; n < nodes.length; n++) {
        const node = nodes[n] ?? 0;
        if (seen[node] === g || !((weights[node] ?? 0) > 0)) continue;
        seen[node] = g;
        boundary.push(node);
      }
    wait(boundary);
    return { pivots, boundary };
  });
}
