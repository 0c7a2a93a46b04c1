import type { Scheme } from "@cornerway/schema";
import { useMemo } from "react";
import { laterPart } from "../controls/later-part.ts";
import type { PlacedNote } from "../notes/placed-note.ts";
import type { LeaderAnchor } from "../sheet/contract.ts";
import type { PaperSheetProps } from "./paper-sheet-props.ts";
import type { SeenPaper } from "./use-seen-paper.ts";

/** The drawing does without: notes come with the engine's answer, and where they stand with them. */
const usePlacing = laterPart(() => import("../notes/placed-note.ts"));

export interface NotesOnViews {
  notes: readonly PlacedNote[];
  /** The number a mark bears in the margin, by mark id. */
  numbers: ReadonlyMap<string, number>;
  /** Ends of the leaders. */
  anchors: readonly (LeaderAnchor & { number: number; colour: string })[];
}

/** Notes numbered by the views as laid, so that looking closer renumbers none; their leaders end where they are seen. */
export function useNotesOnViews(
  { notes, eye, isometric = true }: Pick<PaperSheetProps, "notes" | "eye" | "isometric">,
  { field, laid, looking: { views }, rested: scheme, covered }: SeenPaper & { rested: Scheme },
): NotesOnViews {
  const placing = usePlacing();
  const { side, storey, unfoldedId, picture, section } = eye;
  const on = useMemo(
    () =>
      field === null || laid === null || unfoldedId !== null
        ? null
        : { scheme, side, storey, views: laid, field, isometric: isometric && section === null && !covered, picture },
    [field, laid, unfoldedId, scheme, side, storey, isometric, picture, section, covered],
  );
  const placed = useMemo(() => placing?.placeNotes(notes, on) ?? none, [placing, notes, on]);
  const seen = useMemo(
    () =>
      placing === null || on === null || views === null || views === laid
        ? placed
        : placing.seenNotes(placed, notes, { ...on, views }),
    [placing, placed, notes, on, views, laid],
  );
  return useMemo(
    () => ({
      notes: seen,
      numbers: placing?.noteNumbers(seen) ?? noNumbers,
      anchors: placing?.leaderAnchors(seen) ?? [],
    }),
    [placing, seen],
  );
}

const none: readonly PlacedNote[] = [];
const noNumbers: ReadonlyMap<string, number> = new Map();
