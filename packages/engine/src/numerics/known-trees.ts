import type { NodeGraph } from "./elimination-order.ts";
import { frontTree, type FrontTree } from "./front-tree.ts";
import { sameGraph } from "./same-graph.ts";

/**
 * Orders of work for graphs met before. Containers with openings of one size in other places mostly share a graph; finding
 * the order anew takes a fifth of the time of condensing one (measured).
 */
export class KnownTrees {
  private readonly known: { graph: NodeGraph; sum: number; tree: FrontTree }[] = [];

  take(graph: NodeGraph): FrontTree {
    const sum = checksum(graph);
    const at = this.known.findIndex((one) => one.sum === sum && sameGraph(one.graph, graph));
    const [found = { graph, sum, tree: frontTree(graph) }] = at < 0 ? [] : this.known.splice(at, 1);
    this.known.push(found);
    if (this.known.length > KEPT) this.known.shift();
    return found.tree;
  }
}

const KEPT = 64;

/** Tells most graphs apart at a glance (FNV-1a over the numbers). */
function checksum({ weights, cliques }: NodeGraph): number {
  let sum = 0x811c9dc5;
  for (const weight of weights) sum = Math.imul(sum ^ weight, 0x01000193);
  for (const clique of cliques) for (const node of clique) sum = Math.imul(sum ^ node, 0x01000193);
  return sum;
}
