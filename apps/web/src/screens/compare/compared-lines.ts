import type { Assessment, ElementChange, Pair, Premium, Verdict } from "@cornerway/schema";
import { elementVerdicts } from "../../drawing/marks/element-verdicts.ts";
import { changeWords, type ChangeWords, type Telling } from "../../wording/change-words.ts";
import { listOf } from "../../wording/list-of.ts";

/** One line of what changed: an element, or several that changed alike. */
export type ComparedLine = {
  ids: readonly string[];
  sentence: string;
  /** Null where it is not there, or no mark concerns it. */
  verdict: Pair<Verdict | null>;
  there: Pair<boolean>;
  /** The greatest force that comes down through it by statics, kN; null where none does. */
  forceKn: Pair<number | null>;
  /** What it adds above the plain stack; null where prices are not seen or not known. */
  money: Pair<number | null>;
};

export type ComparedSides = { assessment: Pair<Assessment | null>; premium: Pair<Premium | null> };

/** What changed, line by line, with verdict, force and premium of either side. */
export function comparedLines(
  changes: readonly ElementChange[],
  { assessment, premium }: ComparedSides,
  telling: Telling,
): ComparedLine[] {
  const verdictsOf = eachSide(assessment, (side) => elementVerdicts(side, noneAnswered));
  const lines = changes.map((change): Single => {
    const { id, before, after } = change;
    const paid = [id, ...change.with.map((element) => element.id)];
    return {
      ...{ change, ids: [id], words: changeWords(change, telling) },
      there: { before: before !== null, after: after !== null },
      verdict: eachSide(verdictsOf, (side) => side.get(id)?.verdict ?? null),
      forceKn: eachSide(assessment, (side) => forceOf(side, id)),
      money: eachSide(premium, (side) => moneyOf(side, paid)),
    };
  });
  return grouped(lines).map(joined);
}

const noneAnswered: ReadonlySet<string> = new Set();

export const eachSide = <T, R>({ before, after }: Pair<T>, of: (side: T) => R): Pair<R> => ({
  before: of(before),
  after: of(after),
});

type Single = Omit<ComparedLine, "sentence"> & { change: ElementChange; words: ChangeWords };

/** Elements of one list that changed alike and are judged alike stand together. */
function grouped(lines: readonly Single[]): Single[][] {
  const groups = new Map<string, Single[]>();
  for (const line of lines) {
    const { change, words, verdict } = line;
    const alone = words.name === "" ? change.id : "";
    const key = JSON.stringify([change.collection, words.did, verdict.before, verdict.after, alone]);
    groups.set(key, [...(groups.get(key) ?? []), line]);
  }
  return [...groups.values()];
}

function joined(group: readonly Single[]): ComparedLine {
  const [first] = group;
  if (first === undefined) throw new RangeError("a group of changes has one at least");
  const names = group
    .map(({ words }) => words.name)
    .filter((name) => name !== "")
    .toSorted(byName);
  const sentence = names.length === 0 ? first.words.did : `${listOf(names)} ${first.words.did}`;
  const { verdict, there } = first;
  const all = <T>(of: (line: Single) => T): T[] => group.map(of);
  return {
    ids: group.flatMap(({ ids }) => ids),
    sentence: `${sentence.charAt(0).toUpperCase()}${sentence.slice(1)}.`,
    verdict,
    there,
    forceKn: {
      before: greatest(all((line) => line.forceKn.before)),
      after: greatest(all((line) => line.forceKn.after)),
    },
    money: { before: sumOf(all((line) => line.money.before)), after: sumOf(all((line) => line.money.after)) },
  };
}

/** P2 before P10. */
const byName = new Intl.Collator("en", { numeric: true }).compare;

/** The greatest force in an element by statics, kN: in its posts and rails, or what it gives to the ground. */
function forceOf(assessment: Assessment | null, id: string): number | null {
  if (assessment === null) return null;
  const within = assessment.path
    .filter(({ elementId }) => elementId === id)
    .flatMap(({ forceTopKn, forceFootKn }) => [Math.abs(forceTopKn), Math.abs(forceFootKn)]);
  const seats = assessment.bearings.filter(({ seatId }) => seatId === id).map(({ forceKn }) => Math.abs(forceKn));
  const toGround = assessment.statics.reactions.filter(({ elementId }) => elementId === id);
  const given = toGround.length === 0 ? [] : [toGround.reduce((sum, { forceKn }) => sum + forceKn, 0)];
  return greatest([...within, ...seats, ...given]);
}

const moneyOf = (premium: Premium | null, ids: readonly string[]): number | null =>
  premium === null
    ? null
    : sumOf(premium.lines.filter(({ elementId }) => ids.includes(elementId)).map(({ money }) => money));

const known = (values: readonly (number | null)[]): number[] => values.filter((value) => value !== null);
const greatest = (values: readonly (number | null)[]): number | null =>
  known(values).length === 0 ? null : Math.max(...known(values));
const sumOf = (values: readonly (number | null)[]): number | null =>
  values.includes(null) ? null : known(values).reduce((sum, value) => sum + value, 0);

/** One that did not change itself and is judged otherwise, because of what changed. */
export type JudgedOtherwise = { id: string; verdict: Pair<Verdict | null> };

export function judgedOtherwise(stayed: readonly string[], assessment: Pair<Assessment | null>): JudgedOtherwise[] {
  if (assessment.before === null || assessment.after === null) return [];
  const verdictsOf = eachSide(assessment, (side) => elementVerdicts(side, noneAnswered));
  return stayed
    .map((id) => ({ id, verdict: eachSide(verdictsOf, (side) => side.get(id)?.verdict ?? null) }))
    .filter(({ verdict }) => verdict.before !== verdict.after);
}
