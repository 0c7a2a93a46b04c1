import type { Impact } from "@cornerway/engine";
import type { JudgementOf } from "@cornerway/schema";
import { capitalised } from "./capitalised.ts";
import { listOf } from "./list-of.ts";
import type { NameOf } from "./name-of.ts";

/**
 * What an edit would undo, in one line: "P1 loses its load, F1 does not work; the answer on F1 and the stamp of G1 go stale."
 * Null where it undoes nothing.
 */
export function impactSentence({ supports, verdicts, stale }: Impact, nameOf: NameOf): string | null {
  const fallen = verdicts.units.filter(({ before, after }) => before !== null && after === "does not work");
  const drawn = [
    ...supports.map(({ id, loses }) => `${nameOf(id)} loses ${loses}`),
    ...fallen.map(({ unitId }) => `${nameOf(unitId)} does not work`),
  ];
  const given = stale.map((each) => judgementName(each, nameOf));
  const said = [
    ...(drawn.length === 0 ? [] : [atMost(drawn, "more")]),
    ...(given.length === 0 ? [] : [`${atMost(given, "others")} ${given.length === 1 ? "goes" : "go"} stale`]),
  ];
  return said.length === 0 ? null : `${capitalised(said.join("; "))}.`;
}

/** "T1 stands on F1." Null where nothing does. */
export function stoodOnSentence(ids: readonly string[], on: string, nameOf: NameOf): string | null {
  if (ids.length === 0) return null;
  const names = ids.map(nameOf).toSorted((a, b) => a.localeCompare(b, "en", { numeric: true }));
  return `${listOf(names)} ${ids.length === 1 ? "stands" : "stand"} on ${on}.`;
}

/** "the answer on F1", "the stamp on revision C", "the owner’s decision on revision C". */
function judgementName({ kind, number, revision, elementId }: JudgementOf, nameOf: NameOf): string {
  const on = elementId === null ? ` on revision ${revision ?? ""}` : ` on ${nameOf(elementId)}`;
  switch (kind) {
    case "answer":
      return `the answer${on}`;
    case "stamp":
      return `the stamp${on}`;
    case "check":
      return `the check${on}`;
    case "disposition":
      return `the engineer’s disposition${on}`;
    case "confirmation":
      return `confirmation ${number ?? ""} of values`;
    case "decision":
      return `the owner’s decision${on}`;
    case "request taken in":
      return `request ${number ?? ""} that was taken in`;
    case "issue for seal":
      return `the issue for seal${on}`;
  }
}

/** As many as one line holds, and how many there are beside them. */
function atMost(names: readonly string[], others: string): string {
  const apart = [...new Set(names)];
  return apart.length <= mostNamed + 1
    ? listOf(apart)
    : listOf([...apart.slice(0, mostNamed), `${apart.length - mostNamed} ${others}`]);
}
const mostNamed = 3;
