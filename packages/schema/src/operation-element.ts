import type { Operation } from "./operation.ts";
import type { SchemeElement } from "./scheme-collections.ts";

/** The element an operation carries whole: one it adds, or one as it is to be; undefined for the others. */
export function elementOf(operation: Operation): SchemeElement | undefined {
  switch (operation.kind) {
    case "container.place":
    case "container.change":
      return operation.container;
    case "opening.cut":
    case "opening.change":
      return operation.opening;
    case "post.set":
    case "post.change":
      return operation.post;
    case "pad.set":
    case "pad.change":
      return operation.pad;
    case "beam.set":
    case "beam.change":
      return operation.beam;
    case "seat.set":
    case "seat.change":
      return operation.seat;
    case "tie.set":
    case "tie.change":
      return operation.tie;
    case "lock.set":
    case "lock.change":
      return operation.lock;
    case "load.put":
    case "free-load.put":
    case "free-load.change":
      return operation.load;
    case "use.set":
    case "use.change":
      return operation.use;
    case "override.set":
    case "override.change":
      return operation.override;
    default:
      return undefined;
  }
}
