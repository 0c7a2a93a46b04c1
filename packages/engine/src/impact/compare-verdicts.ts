import type { Assessment, Mark, Verdict } from "@cornerway/schema";
import { verdictRank } from "../marks/verdicts-of.ts";
import { measureOf } from "./mark-measure.ts";

export interface MarkTurned {
  readonly before: Mark;
  readonly after: Mark;
}

/** Null on the side where the unit is not there. */
export interface UnitTurned {
  readonly unitId: string;
  readonly before: Verdict | null;
  readonly after: Verdict | null;
}

/** What is not the same in what two assessments say, subject by subject. A subject that says the same is in no list. */
export interface VerdictsCompared {
  readonly whole: { readonly before: Verdict; readonly after: Verdict };
  /** Units whose verdict is another one, and those that came or went; in the order of their ids. */
  readonly units: readonly UnitTurned[];
  readonly appeared: readonly Mark[];
  readonly gone: readonly Mark[];
  /** Of another verdict. */
  readonly worse: readonly MarkTurned[];
  readonly better: readonly MarkTurned[];
  /** Of the same verdict, whose own figure (`measureOf`) grew. */
  readonly heavier: readonly MarkTurned[];
}

/** Compares two assessments of the same scope by subject: marks and units by their ids. Lists keep the order worst first. */
export function compareVerdicts(before: Assessment, after: Assessment): VerdictsCompared {
  const was = new Map(before.marks.map((mark) => [mark.id, mark]));
  const is = new Set(after.marks.map(({ id }) => id));
  const both = after.marks.flatMap((mark): MarkTurned[] => {
    const old = was.get(mark.id);
    return old === undefined ? [] : [{ before: old, after: mark }];
  });
  return {
    whole: { before: before.verdict, after: after.verdict },
    units: unitsTurned(before, after),
    appeared: after.marks.filter(({ id }) => !was.has(id)),
    gone: before.marks.filter(({ id }) => !is.has(id)),
    worse: both.filter((turned) => isWorse(turned.before.verdict, turned.after.verdict)),
    better: both.filter((turned) => isWorse(turned.after.verdict, turned.before.verdict)),
    heavier: both.filter(grew),
  };
}

/** True where a verdict is worse than the one before; the order is that by which a whole takes the worst of its parts. */
export const isWorse = (before: Verdict, after: Verdict): boolean => verdictRank[after] > verdictRank[before];

/**
 * Ids of marks and units that stand worse than before: of a worse verdict, or a mark that was not there and is worse than
 * `works with steel`. A mark that only weighs more is not among them.
 */
export function worsenedSubjects({ units, appeared, worse }: VerdictsCompared): string[] {
  const fallen = units.filter(({ before, after }) => before !== null && after !== null && isWorse(before, after));
  return [
    ...appeared.filter(({ verdict }) => isWorse("works with steel", verdict)).map(({ id }) => id),
    ...worse.map(({ after }) => after.id),
    ...fallen.map(({ unitId }) => unitId),
  ];
}

function unitsTurned(before: Assessment, after: Assessment): UnitTurned[] {
  const was = new Map(before.units.map(({ id, verdict }) => [id, verdict]));
  const is = new Map(after.units.map(({ id, verdict }) => [id, verdict]));
  return [...new Set([...was.keys(), ...is.keys()])]
    .toSorted()
    .map((unitId) => ({ unitId, before: was.get(unitId) ?? null, after: is.get(unitId) ?? null }))
    .filter((turned) => turned.before !== turned.after);
}

function grew({ before, after }: MarkTurned): boolean {
  if (before.verdict !== after.verdict) return false;
  const [old, now] = [measureOf(before), measureOf(after)];
  return old !== null && now !== null && now > old;
}
