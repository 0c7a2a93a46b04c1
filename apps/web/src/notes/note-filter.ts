import type { Verdict } from "@cornerway/schema";
import type { SheetNote } from "../sheet/contract.ts";

/** Which notes are looked for; null where any will do. */
export interface NoteFilter {
  readonly verdict: Verdict | null;
  /** Who wrote on it. */
  readonly author: string | null;
  /** Whether all that was written on it is settled. */
  readonly settled: boolean | null;
}

export const everyNote: NoteFilter = { verdict: null, author: null, settled: null };

export const looksForAny = ({ verdict, author, settled }: NoteFilter): boolean =>
  verdict === null && author === null && settled === null;

type Filtered = Pick<SheetNote, "verdict" | "comments">;

export const isLookedFor = (note: Filtered, { verdict, author, settled }: NoteFilter): boolean =>
  (verdict === null || note.verdict === verdict) &&
  (author === null || note.comments.some(({ authorName }) => authorName === author)) &&
  (settled === null || (note.comments.length > 0 && isSettled(note) === settled));

const isSettled = ({ comments }: Filtered): boolean => comments.every((comment) => comment.settled);

/** Worst first, as the notes of a margin are told. */
const worstFirst: readonly Verdict[] = [
  ...(["does not work", "needs the engineer", "works with steel", "works as built", "not checked"] as const),
];

/** What can be looked for among these notes: verdicts with how many there are, who wrote, whether anything is settled. */
export const lookedAmong = (notes: readonly Filtered[]) => ({
  verdicts: worstFirst
    .map((verdict) => ({ verdict, count: notes.filter((note) => note.verdict === verdict).length }))
    .filter(({ count }) => count > 0),
  authors: [...new Set(notes.flatMap(({ comments }) => comments.map(({ authorName }) => authorName)))].toSorted(),
  anySettled: notes.some(({ comments }) => comments.some(({ settled }) => settled)),
});
