import type { NodeGraph } from "./elimination-order.ts";

export function sameGraph(a: NodeGraph, b: NodeGraph): boolean {
  if (a.cliques.length !== b.cliques.length) return false;
  if (!sameNumbers(a.weights, b.weights) || !sameNumbers(a.retained, b.retained)) return false;
  return a.cliques.every((clique, n) => sameNumbers(clique, b.cliques[n] ?? []));
}

export function sameNumbers(a: ArrayLike<number>, b: ArrayLike<number>): boolean {
  if (a === b) return true;
  if (a.length !== b.length) return false;
  for (let n = 0; n < a.length; n++) if (a[n] !== b[n]) return false;
  return true;
}
