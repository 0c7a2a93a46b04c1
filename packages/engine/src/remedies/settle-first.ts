import type { Mark, MarkKind } from "@cornerway/schema";
import type { Analysis } from "../load-path/analysis.ts";
import { ofStrength } from "./mark-groups.ts";
import { unitsStandingOn } from "./standing-on.ts";

/**
 * Units that do not stand and come down on what the mark is about, which it does not name: while they fall nothing can be told of
 * what is under them. By id. What strength notes of a unit that falls itself goes with what makes that stand.
 */
export function settleFirst(analysis: Analysis, { elements, fact }: Mark, marks: readonly Mark[]): string[] {
  const falling = marks.flatMap(({ fact: { kind }, verdict, elements: [unitId = ""] }) =>
    fallen.has(kind) && verdict === "does not work" ? [unitId] : [],
  );
  const own = falling.filter((id) => ofStrength.has(fact.kind) && elements[0] === id);
  if (own.length > 0) return [...new Set(own)];
  const above = new Set(elements.flatMap((id) => unitsStandingOn(analysis, id)));
  return falling.filter((id) => above.has(id) && !elements.includes(id)).toSorted();
}

const fallen: ReadonlySet<MarkKind> = new Set<MarkKind>(["tips-over", "mechanism"]);
