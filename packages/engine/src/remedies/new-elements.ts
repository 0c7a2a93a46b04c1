import type { Operation } from "@cornerway/schema";

/** Ids of what a change sets anew, or changes in itself. */
export function newElements(operations: readonly Operation[]): ReadonlySet<string> {
  return new Set(
    operations.flatMap((operation) => {
      switch (operation.kind) {
        case "post.set":
        case "post.change":
          return [operation.post.id];
        case "pad.set":
        case "pad.change":
          return [operation.pad.id];
        case "seat.set":
        case "seat.change":
          return [operation.seat.id];
        case "lock.set":
          return [operation.lock.id];
        case "tie.set":
          return [operation.tie.id];
        case "beam.set":
          return [operation.beam.id];
        case "opening.change":
          return [operation.opening.id];
        default:
          return [];
      }
    }),
  );
}
