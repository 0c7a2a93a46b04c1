import type { Verdict } from "@cornerway/schema";
import { foldNotes } from "../drawing/leaders/fold-notes.ts";
import { orderNotes, type MarginSpan } from "../drawing/leaders/order-notes.ts";
import type { SheetNote } from "./contract.ts";

export type UnlaidNote = Omit<SheetNote, "number">;

/** What a note says that speaks for several of one verdict. */
export type SayTogether = (verdict: Verdict, notes: readonly UnlaidNote[]) => Pick<SheetNote, "heading" | "body" | "greyLine">;

/** Notes folded where there are too many, in the order of their height on the drawing, and numbered. */
export function layNotes(notes: readonly UnlaidNote[], span: MarginSpan, sayTogether: SayTogether): SheetNote[] {
  const { alone, together } = foldNotes(notes);
  const folded = together.map(({ verdict, notes: group }): UnlaidNote => ({
    ...sayTogether(verdict, group),
    markIds: group.flatMap(({ markIds }) => markIds),
    verdict,
    screening: group.some(({ screening }) => screening),
    comments: [],
    anchor: null,
  }));
  return [...orderNotes(alone, span), ...folded].map((note, index) => ({ ...note, number: index + 1 }));
}
