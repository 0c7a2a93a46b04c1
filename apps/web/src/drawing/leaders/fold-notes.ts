import type { Verdict } from "@cornerway/schema";

type Foldable = { verdict: Verdict | null; comments: readonly unknown[] };

/** More notes than this and the margin folds. */
export const mostNotes = 8;

/** Verdicts whose notes are laid together when there are too many, quietest first. */
const foldedFirst: readonly Verdict[] = ["works as built", "not checked", "works with steel"];

export type Folding<N> = { alone: readonly N[]; together: readonly { verdict: Verdict; notes: readonly N[] }[] };

/**
 * Notes as the margin shows them: with more than eight, those that work as built become one note; if there are still
 * too many, those not checked do, then those that work with steel. A note somebody wrote on stays by itself.
 */
export function foldNotes<N extends Foldable>(notes: readonly N[]): Folding<N> {
  let alone: readonly N[] = notes;
  const together: { verdict: Verdict; notes: readonly N[] }[] = [];
  for (const verdict of foldedFirst) {
    if (alone.length + together.length <= mostNotes) break;
    const folds = (note: N) => note.verdict === verdict && note.comments.length === 0;
    const group = alone.filter(folds);
    if (group.length < 2) continue;
    alone = alone.filter((note) => !folds(note));
    together.push({ verdict, notes: group });
  }
  return { alone, together };
}
