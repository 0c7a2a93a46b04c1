import type { Note } from "./review.ts";

/** Marks an engineer wrote on at this very revision: their hatches are inked, all others stay in pencil. */
export const answeredMarks = (notes: readonly Note[], letter: string): ReadonlySet<string> =>
  new Set(
    notes.flatMap(({ markId, revision, author }) =>
      markId !== null && revision === letter && author.role === "engineer" ? [markId] : [],
    ),
  );
