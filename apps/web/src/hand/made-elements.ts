import { elementOf, type Operation } from "@cornerway/schema";

/** What an act drew anew: units before all else, so that a copied group is what is chosen next. */
export function madeElements(operations: readonly Operation[]): string[] {
  const units = operations.flatMap((each) => (each.kind === "container.place" ? [each.container.id] : []));
  if (units.length > 0) return units;
  const [first] = operations.filter(({ kind }) => chosenOnceMade.has(kind)).flatMap((one) => elementOf(one)?.id ?? []);
  return first === undefined ? [] : [first];
}

const chosenOnceMade: ReadonlySet<Operation["kind"]> = new Set<Operation["kind"]>([
  ...(["opening.cut", "post.set", "beam.set", "seat.set", "tie.set", "lock.set", "free-load.put"] as const),
]);
