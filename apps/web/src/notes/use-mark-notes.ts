import type { Mark, Note, Role, Scheme } from "@cornerway/schema";
import { useMemo } from "react";
import { laterPart } from "../controls/later-part.ts";
import type { Offer } from "../sheet/contract.ts";
import { useUnits } from "../units/use-units.ts";
import { namesIn } from "../wording/name-of.ts";
import { elementPlace } from "./element-place.ts";
import { notesFromMarks } from "./notes-from-marks.ts";
import type { UnplacedNote } from "./placed-note.ts";

export const noneAnswered: ReadonlySet<string> = new Set();
const noMarks: readonly Mark[] = [];
const noNotes: UnplacedNote[] = [];
const nothingWritten: readonly Note[] = [];

/** The drawing does without them: marks come from the engine, after it. */
const useWords = laterPart(() => import("../wording/mark-words.ts"));

/** The notes of a sheet in the words of whoever reads it; made anew only when what they speak of changed. None until their words are fetched. */
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
  const words = useWords();
  return useMemo(() => {
    if (words === null) return noNotes;
    return notesFromMarks({
      ...{ marks, written, answered, waiting, offerOn, quietOfferOn },
      say: (mark) => words.markWords(mark, scheme, role ?? "architect", units),
      placeOf: (id) => elementPlace(scheme, id),
      nameOf: namesIn(scheme),
    });
  }, [words, scheme, marks, written, answered, role, units, waiting, offerOn, quietOfferOn]);
}
