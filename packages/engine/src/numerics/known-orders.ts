import { eliminationOrder, type EliminationStep, type NodeGraph } from "./elimination-order.ts";
import { sameGraph } from "./same-graph.ts";

/** Orders of work for stretches of containers met before: most are alike, and finding the order anew takes longer (measured). */
export class KnownOrders {
  private readonly known = new Map<
    number,
    { readonly graph: NodeGraph; readonly steps: readonly EliminationStep[] }[]
  >();

  take(graph: NodeGraph): readonly EliminationStep[] {
    const sum = checksum(graph);
    const alike = this.known.get(sum) ?? [];
    const found = alike.find((one) => sameGraph(one.graph, graph));
    const { steps } = found ?? { steps: eliminationOrder(graph) };
    if (found === undefined) this.keep(sum, [...alike, { graph, steps }]);
    return steps;
  }

  private keep(sum: number, alike: { readonly graph: NodeGraph; readonly steps: readonly EliminationStep[] }[]): void {
    this.known.delete(sum);
    this.known.set(sum, alike);
    for (const oldest of this.known.keys()) if (this.known.size > KEPT) this.known.delete(oldest);
  }
}

/** Graphs kept, the oldest left first: more than the distinct containers of a building of 256 (about 130). */
const KEPT = 512;

/** Tells most graphs apart at a glance (FNV-1a over the numbers). */
function checksum({ weights, cliques }: NodeGraph): number {
  let sum = 0x811c9dc5;
  for (const weight of weights) sum = Math.imul(sum ^ weight, 0x01000193);
  for (const clique of cliques) for (const node of clique) sum = Math.imul(sum ^ node, 0x01000193);
  return sum;
}
