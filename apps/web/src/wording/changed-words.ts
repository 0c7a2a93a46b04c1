import type { UnitSystem } from "@cornerway/schema";
import { fieldsOf } from "../twin/fields/fields-of.ts";
import { sayValue } from "../twin/part/part-field.ts";
import { valueAt } from "../twin/part/path.ts";
import { listOf } from "./list-of.ts";

/**
 * What of an element is otherwise than it was: "packing 40 mm, level error 5 mm". Null where nothing that is stated
 * changed; `before` is null where nobody knows how it was.
 */
export function changedWords(before: object | null, after: object, units: UnitSystem): string | null {
  if (before === null) return null;
  const changed = fieldsOf(after).filter(({ path }) => valueAt(before, path) !== valueAt(after, path));
  if (changed.length === 0) return null;
  const words = changed.map((field) => {
    // The labels of the design basis stand by themselves.
    const group = field.group === undefined || "hazards" in after ? "" : `${field.group.toLowerCase()} `;
    return `${group}${lowered(field.label)} ${sayValue(field, valueAt(after, field.path), units)}`;
  });
  return words.length > mostSaid
    ? `${words.slice(0, mostSaid).join(", ")} and ${words.length - mostSaid} more`
    : listOf(words);
}

const mostSaid = 4;

/** A label within a sentence; what is written in capitals, such as Kzt or SMS, keeps them. */
const lowered = (label: string): string =>
  /^[A-Z][a-z ]/.test(label) ? label.charAt(0).toLowerCase() + label.slice(1) : label;
