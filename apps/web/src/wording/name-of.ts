import type { Operation, Scheme } from "@cornerway/schema";

/** The label an element bears on the drawing, by id; the id itself where none is known. */
export type NameOf = (id: string) => string;

/** Labels of a scheme, and of what the given operations set, for things no longer on the drawing. */
export function namesIn(scheme: Scheme | null, operations: readonly Operation[] = []): NameOf {
  const names = new Map<string, string>();
  for (const operation of operations) {
    const element = elementSetBy(operation);
    if (element !== null) names.set(element.id, element.tag);
  }
  for (const { id, tag } of tagged(scheme)) names.set(id, tag);
  return (id) => names.get(id) ?? id;
}

const tagged = (scheme: Scheme | null) =>
  scheme === null ? [] : [...scheme.containers, ...scheme.openings, ...scheme.posts, ...scheme.pads];

function elementSetBy(operation: Operation): { id: string; tag: string } | null {
  switch (operation.kind) {
    case "container.place":
      return operation.container;
    case "opening.cut":
      return operation.opening;
    case "post.set":
      return operation.post;
    case "pad.set":
      return operation.pad;
    default:
      return null;
  }
}
