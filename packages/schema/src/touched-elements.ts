import type { Operation } from "./operation.ts";
import type { Scheme } from "./scheme.ts";
import { elementById, referencesOf, tagOf, type SchemeElement } from "./scheme-collections.ts";
import { elementOf } from "./operation-element.ts";

/** Keys of what an operation reads and writes: element ids, `site`, `basis`, and `tag:X` for a label it claims or frees. */
export type Touched = { reads: string[]; writes: string[] };

/**
 * Two operations are independent when neither writes what the other reads or writes. Server order decides between
 * dependent ones; independent ones are re-based without asking. `scheme` is the one the operation was made on: an
 * operation that names only an id also touches what its element hangs on and, when it removes, the label.
 */
export function touchedElements(scheme: Scheme, operation: Operation): Touched {
  if (operation.kind === "site.change") return { reads: [], writes: ["site"] };
  if (operation.kind === "basis.change") return { reads: [], writes: ["basis"] };
  const after = elementOf(operation);
  const id = after?.id ?? ("id" in operation ? operation.id : "");
  const before = elementById(scheme, id);
  const reads = [...referred(before), ...referred(after)];
  const labels = leavesLabel(operation) ? [] : [...labelOf(before), ...labelOf(after)];
  return { reads: [...new Set(reads)], writes: [...new Set([id, ...labels])] };
}

/** Everything a list of operations touches, each key once, in the order first met. */
export function touchedByAll(scheme: Scheme, operations: readonly Operation[]): Touched {
  const each = operations.map((operation) => touchedElements(scheme, operation));
  return {
    reads: [...new Set(each.flatMap((touched) => touched.reads))],
    writes: [...new Set(each.flatMap((touched) => touched.writes))],
  };
}

/** An operation on one property of an element keeps the label it has. */
const leavesLabel = (operation: Operation) =>
  elementOf(operation) === undefined && !operation.kind.endsWith(".remove") && operation.kind !== "opening.close";

const referred = (element: SchemeElement | undefined) =>
  element === undefined ? [] : referencesOf(element).map(({ id }) => id);

function labelOf(element: SchemeElement | undefined): string[] {
  const tag = element === undefined ? undefined : tagOf(element);
  return tag === undefined ? [] : [`tag:${tag}`];
}
