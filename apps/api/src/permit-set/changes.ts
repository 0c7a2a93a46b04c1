import { changesOnElevation, changesOnPlan, type PlacedChange, type Side } from "@cornerway/engine";
import { compareSchemes, tagOf, type ElementChange } from "@cornerway/schema";
import type { SetSource } from "./set-source.ts";

/** A change since the set that was printed before: its number stands beside its delta, and on its line in the list. */
export type NumberedChange = { number: number; change: ElementChange; tag: string; what: string };

/** Changed elements in the order of the lists of a scheme; none where no set was printed before. */
export function changesSince({ before, scheme }: SetSource): NumberedChange[] {
  if (before === null) return [];
  return compareSchemes(before.scheme, scheme).elements.map((change, at) => {
    const element = change.after ?? change.before;
    return {
      ...{ number: at + 1, change, what: whatOf(change) },
      tag: (element === null ? undefined : tagOf(element)) ?? change.id,
    };
  });
}

/** What holds for the whole and is drawn nowhere: it has no cloud. */
export function wholeChanges({ before, scheme }: SetSource): string[] {
  if (before === null) return [];
  const { site, basis } = compareSchemes(before.scheme, scheme);
  return [
    ...(site === null ? [] : ["The site or the code edition is another."]),
    ...(basis === null ? [] : ["The design basis is another."]),
  ];
}

function whatOf({ before, after, with: hanging, collection }: ElementChange): string {
  const with_ = hanging.length === 0 ? "" : `, with ${hanging.length} that hang on it`;
  const kind = collection
    .replace(/([A-Z])/g, " $1")
    .toLowerCase()
    .replace(/s$/, "");
  const turn = before === null ? "new" : after === null ? "taken away" : "changed";
  return `${kind}: ${turn}${with_}`;
}

export const placedOnElevation = (source: SetSource, side: Side): PlacedChange[] =>
  source.before === null ? [] : changesOnElevation(elementsOf(source), source.before.scheme, source.scheme, side);

export const placedOnPlan = (source: SetSource, storey: number): PlacedChange[] =>
  source.before === null ? [] : changesOnPlan(elementsOf(source), source.before.scheme, source.scheme, storey);

const elementsOf = (source: SetSource): ElementChange[] => changesSince(source).map(({ change }) => change);
