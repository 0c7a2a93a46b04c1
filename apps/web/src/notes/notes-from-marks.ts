import type { Mark, MarkSentences, Note, PointMm, Verdict } from "@cornerway/schema";
import type { NameOf } from "../wording/name-of.ts";
import { dayAndTimeOf } from "../controls/calendar.ts";
import { foldNotes } from "../drawing/leaders/fold-notes.ts";
import { verdictWords } from "../look/verdict-class.ts";
import { matterOf } from "../wording/matter-words.ts";
import type { NoteComment, Offer } from "../sheet/contract.ts";
import type { UnplacedNote } from "./placed-note.ts";

export interface NotesFrom {
  marks: readonly Mark[];
  /** What people wrote, answers included. */
  written: readonly Note[];
  /** Where an element is seen, for words pinned to it alone. */
  placeOf: (elementId: string) => PointMm | null;
  nameOf: NameOf;
  /** What a mark says to this reader. */
  say: (mark: Mark) => MarkSentences;
  /** Marks an engineer has answered on this very content. */
  answered: ReadonlySet<string>;
  /** Marks of an earlier answer that are judged anew: told as waiting, never as answers. */
  waiting?: ReadonlySet<string> | undefined;
  /** The command under a note that speaks for this mark alone. */
  offerOn?: ((mark: Mark) => Offer | undefined) | undefined;
  /** The quiet way under it. */
  quietOfferOn?: ((mark: Mark) => Offer | undefined) | undefined;
}

/** Verdicts whose marks of one kind are told together: nothing is to be done about each by itself. */
const toldTogether: ReadonlySet<Verdict> = new Set(["works as built", "not checked", "works with steel"]);

/** The numbered notes of a sheet: one for each mark, what is quiet told together, with people's words below. */
export function notesFromMarks(from: NotesFrom): UnplacedNote[] {
  const spoken = foldQuiet(from).map((group) => noteOf(group, from));
  const { alone, together } = spoken.length > mostApart ? foldNotes(spoken) : { alone: spoken, together: [] };
  const folded = together.map(({ notes }) => laidTogether(notes));
  const onMarks = new Set(from.marks.map(({ id }) => id));
  const loose = from.written.filter(
    ({ answers, markId }) => answers === null && (markId === null || !onMarks.has(markId)),
  );
  return [...alone, ...folded, ...loose.map((note) => looseNote(note, from))];
}

/** What waits is nothing to act on either. */
const isTogether = ({ verdict }: Mark, waits: boolean): boolean => toldTogether.has(verdict) || waits;

function foldQuiet({ marks, waiting }: NotesFrom): Mark[][] {
  const groups = new Map<string, Mark[]>();
  for (const mark of marks) {
    const waits = waiting?.has(mark.id) ?? false;
    const key = isTogether(mark, waits) ? `${mark.fact.kind} ${waits ? "waits" : mark.verdict}` : mark.id;
    groups.set(key, [...(groups.get(key) ?? []), mark]);
  }
  return [...groups.values()];
}

/** More notes than this are laid together by verdict; below it the margin scrolls. */
const mostApart = 14;
const mostSaid = 1;

function noteOf(group: Mark[], from: NotesFrom): UnplacedNote {
  const [mark] = group;
  if (mark === undefined) throw new Error("a note speaks for at least one mark");
  const ids = group.map(({ id }) => id);
  const words = from.written.filter(({ markId }) => markId !== null && ids.includes(markId));
  const elementId = mark.elements[0] ?? "";
  const said = group.map(from.say);
  return {
    id: mark.id,
    elementId,
    markIds: ids,
    ...verdictOf(mark, from),
    matter: group.length > 1 ? `${matterOf(mark.fact.kind)} · ${group.length}` : undefined,
    screening: !ids.every((id) => from.answered.has(id)),
    ...saidOf(said.map(({ body }) => body)),
    greyLine: group.length === 1 ? said[0]?.detail : undefined,
    comments: withAnswers(words, from.written).map(commentOf),
    at: mark.at,
    ...(group.length === 1 && from.waiting?.has(mark.id) !== true
      ? { offer: from.offerOn?.(mark), quietOffer: from.quietOfferOn?.(mark) }
      : {}),
  };
}

/** A mark that waits says nothing of how it stands. */
const verdictOf = ({ id, verdict }: Mark, { waiting }: NotesFrom): Pick<UnplacedNote, "verdict" | "heading"> =>
  waiting?.has(id) === true ? { verdict: "not checked", heading: "Is checked again; said before" } : { verdict };

/** The first sentences of marks told together, and those that stay folded. */
const saidOf = (sentences: readonly string[]) => ({
  body: sentences.slice(0, mostSaid).join(" "),
  alike: sentences.slice(mostSaid),
});

/** Several notes of one verdict as one, pointing where the first does. */
function laidTogether(notes: readonly UnplacedNote[]): UnplacedNote {
  const [first] = notes;
  if (first === undefined) throw new Error("nothing is laid together");
  return {
    ...first,
    markIds: notes.flatMap(({ markIds }) => markIds),
    matter: mattersOf(notes),
    screening: notes.some(({ screening }) => screening),
    ...saidOf(notes.flatMap(({ body, alike = [] }) => [body, ...alike])),
  };
}

/** How many marks of several kinds are laid together. */
function mattersOf(notes: readonly UnplacedNote[]): string {
  const count = notes.reduce((sum, { markIds }) => sum + markIds.length, 0);
  return `Several matters · ${count}`;
}

function looseNote(note: Note, from: NotesFrom): UnplacedNote {
  const words = withAnswers([note], from.written);
  return {
    id: note.id,
    elementId: note.elementId,
    markIds: [],
    verdict: null,
    screening: false,
    heading: `Note on ${from.nameOf(note.elementId)}`,
    body: "",
    comments: words.map(commentOf),
    at: from.placeOf(note.elementId),
  };
}

/** The notes and everything that answers them, in the order written. */
function withAnswers(first: readonly Note[], all: readonly Note[]): Note[] {
  const ids = new Set(first.map(({ id }) => id));
  const family = all.filter(({ id, answers }) => ids.has(id) || (answers !== null && ids.has(answers)));
  return family.toSorted((a, b) => (a.writtenAt < b.writtenAt ? -1 : 1));
}

const commentOf = (note: Note): NoteComment => ({
  id: note.id,
  text: note.text,
  authorName: note.author.name,
  role: note.author.role,
  at: dayAndTimeOf(note.writtenAt),
  settled: note.settledAt !== null,
});

/** "Does not work yet" for the title block. */
export const wholeWords = (verdict: Verdict): string =>
  verdict === "does not work" ? "Does not work yet" : verdictWords(verdict);
