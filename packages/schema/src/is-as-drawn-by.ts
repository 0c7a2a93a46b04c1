import { canonicalJson } from "./canonical-json.ts";
import { elementOf } from "./operation-element.ts";
import type { Operation } from "./operation.ts";
import { elementById } from "./scheme-collections.ts";
import type { Scheme } from "./scheme.ts";

/** True where an operation would change nothing: what it draws is there as it draws it. */
export function isAsDrawnBy(scheme: Scheme, operation: Operation): boolean {
  if (operation.kind === "site.change") return same(scheme.site, operation.site);
  if (operation.kind === "basis.change") return same(scheme.basis, operation.basis);
  const whole = elementOf(operation);
  if (whole !== undefined) return same(elementById(scheme, whole.id), whole);
  if (!("id" in operation)) return false;
  const element = elementById(scheme, operation.id);
  const { kind, ...wanted } = operation;
  if (kind.endsWith(".remove") || kind === "opening.close") return element === undefined;
  return element !== undefined && same({ ...element, ...wanted }, element);
}

const same = (one: unknown, other: unknown): boolean => textOf(one) === textOf(other);
const textOf = (value: unknown): string => (value === undefined ? "" : canonicalJson(value));
