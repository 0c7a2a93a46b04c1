import { elementOf, elementsOf, tagOf, type Operation, type Scheme } from "@cornerway/schema";

/** The label an element bears on the drawing, by id; the id itself where none is known. */
export type NameOf = (id: string) => string;

/** Labels of a scheme, and of what the given operations set, for things no longer on the drawing. */
export function namesIn(scheme: Scheme | null, operations: readonly Operation[] = []): NameOf {
  const set = operations.map(elementOf).filter((element) => element !== undefined);
  const drawn = scheme === null ? [] : elementsOf(scheme);
  const names = new Map([...set, ...drawn].map((element) => [element.id, tagOf(element)]));
  return (id) => names.get(id) ?? id;
}
