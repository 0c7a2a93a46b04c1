import type { FrontTree } from "./front-tree.ts";

/** A symmetric contribution; equations of −1 (held freedoms) are skipped. `matrix` is full, row-major. */
export interface SparseElement {
  readonly equations: Int32Array;
  readonly matrix: Float64Array;
}

export interface SparseFactor {
  readonly tree: FrontTree;
  /** L of each front, n × pivots, row-major. */
  readonly panels: readonly Float64Array[];
  readonly diagonal: Float64Array;
  /** What is left on the retained unknowns (their Schur complement), full, row-major. */
  readonly schur: Float64Array;
  /** Sum of the contributions on each equation's diagonal. */
  readonly assembledDiagonal: Float64Array;
  /** Equations whose pivot nearly vanished; each was held by a spring equal to its assembled diagonal. */
  readonly loose: readonly number[];
}
