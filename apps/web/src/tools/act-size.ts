import type { Operation } from "@cornerway/schema";

/** The most operations one act of drawing holds. */
export const mostInOneAct = 200;

/** Why operations are too many for one act; null when they are not. */
export const tooMany = (operations: readonly Operation[]): string | null =>
  operations.length <= mostInOneAct
    ? null
    : `That is ${operations.length} changes, and one act holds ${mostInOneAct}. Choose fewer things, or copy fewer times at once.`;
