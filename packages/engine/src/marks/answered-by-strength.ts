import type { Mark, MarkKind, Verdict } from "@cornerway/schema";
import type { Strength } from "../strength/strength-of.ts";
import { verdictRank, worstOf } from "./verdicts-of.ts";

type Judged = Extract<Strength, { accepted: true }>;

/** What the load path asks of strength, and the strength run answers: how the sheet, the rails and the joints there hold, what ties and beams take. */
const asked: ReadonlySet<MarkKind> = new Set<MarkKind>([
  "opening-in-sheet",
  "wall-out",
  "load-over-opening",
  "overhang",
  "borne-on-rail",
  "tie-joins",
  "post-carries",
  "beam-carries",
  "borne-on-beam",
]);

/**
 * Marks of the load path that leave a question to strength take the verdict of strength for the units they name, once it is
 * judged under all loads. Where a unit does not work in strength it is the engineer who says whether it is for this cause.
 */
export function answeredByStrength(marks: readonly Mark[], { units, under }: Judged): Mark[] {
  if (under !== "all loads") return [...marks];
  const verdicts = new Map(units.map(({ unitId, verdict }) => [unitId, verdict]));
  return marks.map((mark) => {
    if (mark.verdict !== "not checked" || !asked.has(mark.fact.kind)) return mark;
    const named = mark.elements.flatMap((id): Verdict[] => {
      const verdict = verdicts.get(id);
      return verdict === undefined ? [] : [verdict];
    });
    return named.length === 0 ? mark : { ...mark, verdict: answer(worstOf(named)), basis: BASIS };
  });
}

const answer = (strength: Verdict): Verdict =>
  verdictRank[strength] > verdictRank["needs the engineer"] ? "needs the engineer" : strength;

const BASIS = "Geometry and statics as drawn; the verdict is that of strength, which has its own mark.";
