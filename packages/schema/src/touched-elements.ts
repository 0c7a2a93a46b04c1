import type { Operation } from "./operation.ts";
import type { Scheme } from "./scheme.ts";

/** Keys of what an operation reads and writes: element ids, `site`, and `tag:X` for a label it claims or frees. */
export type Touched = { reads: string[]; writes: string[] };

/**
 * Two operations are independent when neither writes what the other reads or writes. Server order decides between
 * dependent ones; independent ones are re-based without asking. `scheme` is the one the operation was made on: an
 * operation that names only an id also touches the unit its element belongs to and, when it removes, the label.
 */
export function touchedElements(scheme: Scheme, operation: Operation): Touched {
  switch (operation.kind) {
    case "container.place":
      return claims(operation.container);
    case "opening.cut":
      return { ...claims(operation.opening), reads: [operation.opening.containerId] };
    case "post.set":
      return claims(operation.post);
    case "pad.set":
      return claims(operation.pad);
    case "load.put":
      return { reads: [operation.load.containerId], writes: [operation.load.id] };
    case "site.change":
      return { reads: [], writes: ["site"] };
    case "container.remove":
    case "opening.close":
    case "post.remove":
    case "pad.remove":
    case "load.remove":
      return { reads: unitOf(scheme, operation.id), writes: [operation.id, ...labelOf(scheme, operation.id)] };
    default:
      return { reads: unitOf(scheme, operation.id), writes: [operation.id] };
  }
}

/** Everything a list of operations touches, each key once, in the order first met. */
export function touchedByAll(scheme: Scheme, operations: readonly Operation[]): Touched {
  const each = operations.map((operation) => touchedElements(scheme, operation));
  return {
    reads: [...new Set(each.flatMap((touched) => touched.reads))],
    writes: [...new Set(each.flatMap((touched) => touched.writes))],
  };
}

const claims = (element: { id: string; tag: string }): Touched => ({
  reads: [],
  writes: [element.id, `tag:${element.tag}`],
});

const unitOf = (scheme: Scheme, id: string) =>
  [...scheme.openings, ...scheme.loads].filter((part) => part.id === id).map((part) => part.containerId);

const labelOf = (scheme: Scheme, id: string) =>
  [...scheme.containers, ...scheme.openings, ...scheme.posts, ...scheme.pads]
    .filter((element) => element.id === id)
    .map((element) => `tag:${element.tag}`);
