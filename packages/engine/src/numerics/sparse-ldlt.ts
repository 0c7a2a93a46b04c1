import { Elimination, type Reuse } from "./elimination.ts";
import type { FrontTree } from "./front-tree.ts";
import type { SparseElement, SparseFactor } from "./sparse-factor.ts";
import { SUSPECT_PIVOT_RATIO } from "./tolerances.ts";

/**
 * Multifrontal LDLᵀ without row exchanges (stiffness is positive definite when nothing moves freely).
 * Source: Duff and Reid, ACM Trans. Math. Softw. 9 (1983) (from memory).
 * `trusted` equations keep their pivot however small; `reuse` saves what has not changed since an earlier factorisation.
 */
export function factorise(
  tree: FrontTree,
  elements: readonly SparseElement[],
  trusted: ReadonlySet<number> = new Set(),
  reuse: Reuse | null = null,
): SparseFactor {
  const assembledDiagonal = sumDiagonals(tree.equations, elements);
  const diagonal = new Float64Array(tree.equations);
  const loose: number[] = [];
  const settle = (pivot: number, equation: number): number => {
    const assembled = assembledDiagonal[equation] ?? 0;
    if (pivot > SUSPECT_PIVOT_RATIO * assembled || (pivot > 0 && trusted.has(equation))) return pivot;
    loose.push(equation);
    return pivot + (assembled > 0 ? assembled : 1);
  };
  const { panels, schur } = new Elimination(tree, elements, reuse).run(diagonal, settle);
  return { tree, panels, diagonal, schur, assembledDiagonal, loose };
}

function sumDiagonals(equations: number, elements: readonly SparseElement[]): Float64Array {
  const sum = new Float64Array(equations);
  for (const { equations: rows, matrix } of elements) {
    for (let i = 0; i < rows.length; i++) {
      const row = rows[i] ?? -1;
      if (row >= 0) sum[row] = (sum[row] ?? 0) + (matrix[i * rows.length + i] ?? 0);
    }
  }
  return sum;
}
