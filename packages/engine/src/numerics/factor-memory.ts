import type { Reuse } from "./elimination.ts";
import type { LowerHalf } from "./lower-half.ts";
import type { NodeGraph } from "./elimination-order.ts";
import { sameGraph, sameNumbers } from "./same-graph.ts";
import { frontTree, type FrontTree } from "./front-tree.ts";
import { factorise } from "./sparse-ldlt.ts";
import type { SparseElement, SparseFactor } from "./sparse-factor.ts";

/**
 * Remembers the last factorisation, so that the next one of the same tree works only the fronts above changed elements. The
 * result has the same bits as a factorisation from nothing.
 */
export class FactorMemory {
  private last: { factor: SparseFactor; elements: readonly SparseElement[]; remainders: LowerHalf[] } | null = null;

  private order: { graph: NodeGraph; tree: FrontTree } | null = null;

  /** A memory that starts from what this one holds and leaves it alone. */
  branch(): FactorMemory {
    const other = new FactorMemory();
    other.last = this.last;
    other.order = this.order;
    return other;
  }

  /** The order of work for this graph, which is the last one where the graph is the same. */
  tree(graph: NodeGraph): FrontTree {
    if (this.order === null || !sameGraph(this.order.graph, graph)) this.order = { graph, tree: frontTree(graph) };
    return this.order.tree;
  }

  factorise(tree: FrontTree, elements: readonly SparseElement[], trusted: ReadonlySet<number>): SparseFactor {
    const { last } = this;
    const same = last !== null && trusted.size === 0 && sameTree(last.factor.tree, tree) ? last : null;
    const clean = same === null ? new Uint8Array(tree.fronts.length) : cleanFronts(tree, same.elements, elements);
    const remainders = same?.remainders.slice() ?? [];
    const reuse: Reuse = {
      shares: false,
      isClean: (front) => clean[front] === 1,
      panel: (front) => same?.factor.panels[front] ?? NOTHING,
      diagonal: same?.factor.diagonal ?? NOTHING,
      remainder: (front) => remainders[front] ?? NOTHING,
      keep: (front, remainder) => (remainders[front] = remainder),
    };
    const factor = factorise(tree, elements, trusted, reuse);
    // a factorisation with held pivots is no basis for the next
    this.last = factor.loose.length === 0 && trusted.size === 0 ? { factor, elements, remainders } : null;
    return factor;
  }
}

const NOTHING = new Float64Array(0);

function sameTree(a: FrontTree, b: FrontTree): boolean {
  if (a === b) return true;
  if (a.fronts.length !== b.fronts.length || a.equations !== b.equations || a.eliminated !== b.eliminated) return false;
  return a.fronts.every((front, n) => {
    const other = b.fronts[n];
    return (
      other !== undefined &&
      front.pivots === other.pivots &&
      front.parent === other.parent &&
      sameNumbers(front.rows, other.rows)
    );
  });
}

/** 1 for every front in and below which all elements are as they were. */
function cleanFronts(tree: FrontTree, before: readonly SparseElement[], now: readonly SparseElement[]): Uint8Array {
  const clean = new Uint8Array(tree.fronts.length).fill(1);
  for (let n = 0; n < Math.max(before.length, now.length); n++) {
    const [was, is] = [before[n], now[n]];
    if (was && is && sameNumbers(was.equations, is.equations) && sameNumbers(was.matrix, is.matrix)) continue;
    if (was) soil(tree, was, clean);
    if (is) soil(tree, is, clean);
  }
  return clean;
}

/** The front in which the element is taken up, and all that follow from it. */
function soil({ fronts, frontOf }: FrontTree, { equations }: SparseElement, clean: Uint8Array): void {
  let front = fronts.length;
  for (const equation of equations) if (equation >= 0) front = Math.min(front, frontOf[equation] ?? front);
  for (; front >= 0 && front < fronts.length; front = fronts[front]?.parent ?? -1) clean[front] = 0;
}
