import type { Mark, Verdict } from "@cornerway/schema";

/** The worst verdict of the marks that name each element; one no mark names is absent. */
export function verdictsOf(marks: readonly Mark[]): Map<string, Verdict> {
  const verdicts = new Map<string, Verdict>();
  for (const { elements, verdict } of marks)
    for (const id of elements) {
      const known = verdicts.get(id);
      verdicts.set(id, known === undefined ? verdict : worse(known, verdict));
    }
  return verdicts;
}

/** The verdict of a whole: the worst of its parts; `not checked` where there are none. */
export const worstOf = (verdicts: readonly Verdict[]): Verdict =>
  verdicts.length === 0 ? "not checked" : verdicts.reduce(worse);

/** From the quietest to the one that decides. */
export const verdictRank: Record<Verdict, number> = {
  "works as built": 0,
  "works with steel": 1,
  "not checked": 2,
  "needs the engineer": 3,
  "does not work": 4,
};

const worse = (a: Verdict, b: Verdict): Verdict => (verdictRank[b] > verdictRank[a] ? b : a);
