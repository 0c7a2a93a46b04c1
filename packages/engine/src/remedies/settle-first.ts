import type { Mark, MarkKind } from "@cornerway/schema";
import type { Analysis } from "../load-path/analysis.ts";
import { unitsStandingOn } from "./standing-on.ts";

/**
 * Units that do not stand and come down on what the mark is about, which it does not name: while they fall nothing can be told of
 * what is under them. By id.
 */
export function settleFirst(analysis: Analysis, { elements }: Mark, marks: readonly Mark[]): string[] {
  const falling = marks.flatMap(({ fact, verdict, elements: [unitId = ""] }) =>
    fallen.has(fact.kind) && verdict === "does not work" && !elements.includes(unitId) ? [unitId] : [],
  );
  const above = new Set(elements.flatMap((id) => unitsStandingOn(analysis, id)));
  return falling.filter((id) => above.has(id)).toSorted();
}

const fallen: ReadonlySet<MarkKind> = new Set<MarkKind>(["tips-over", "mechanism"]);
