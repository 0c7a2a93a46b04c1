import { mostOperations, type Operation } from "@cornerway/schema";

/** Why operations are too many for one act; null when they are not. */
export const tooMany = (operations: readonly Operation[]): string | null =>
  operations.length <= mostOperations
    ? null
    : `That is ${operations.length} changes, and one act holds ${mostOperations}. Choose fewer things, or copy fewer times at once.`;
