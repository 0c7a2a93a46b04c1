import type { Mark, Note, Role, Scheme } from "@cornerway/schema";
import { useMemo } from "react";
import type { Offer } from "../sheet/contract.ts";
import { useUnits } from "../units/use-units.ts";
import { markWords } from "../wording/mark-words.ts";
import { namesIn } from "../wording/name-of.ts";
import { elementPlace } from "./element-place.ts";
import { notesFromMarks } from "./notes-from-marks.ts";
import type { UnplacedNote } from "./placed-note.ts";

export const noneAnswered: ReadonlySet<string> = new Set();
const noMarks: readonly Mark[] = [];
const nothingWritten: readonly Note[] = [];

/** The notes of a sheet in the words of whoever reads it; made anew only when what they speak of changed. */
export function useMarkNotes({
  scheme,
  marks = noMarks,
  written = nothingWritten,
  answered = noneAnswered,
  role,
  waiting = noneAnswered,
  offerOn,
  quietOfferOn,
}: {
  scheme: Scheme;
  marks: readonly Mark[] | undefined;
  written?: readonly Note[];
  answered?: ReadonlySet<string>;
  role: Role | undefined;
  waiting?: ReadonlySet<string>;
  /** The command under a note on this mark; the same function while it does the same. */
  offerOn?: ((mark: Mark) => Offer | undefined) | undefined;
  /** The quiet way under it, likewise. */
  quietOfferOn?: ((mark: Mark) => Offer | undefined) | undefined;
}): UnplacedNote[] {
  const units = useUnits();
  return useMemo(
    () =>
      notesFromMarks({
        marks,
        written,
        answered,
        waiting,
        offerOn,
        quietOfferOn,
        say: (mark) => markWords(mark, scheme, role ?? "architect", units),
        placeOf: (id) => elementPlace(scheme, id),
        nameOf: namesIn(scheme),
      }),
    [scheme, marks, written, answered, role, units, waiting, offerOn, quietOfferOn],
  );
}
