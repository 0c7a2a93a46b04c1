import { lazy, Suspense } from "react";
import type { PlacedNote } from "../notes/placed-note.ts";
import type { NoteSlot } from "../sheet/contract.ts";
import { NotesMargin } from "../sheet/NotesMargin.tsx";
import type { LaidViews } from "./lay-views.ts";
import type { PaperSheetProps } from "./paper-sheet-props.ts";
import type { FilteredNotes } from "./use-note-filter.ts";
import type { NoteWalk } from "./use-note-walk.ts";

const SectionSlip = lazy(async () => ({ default: (await import("./SectionSlip.tsx")).SectionSlip }));

const NoteFilters = lazy(async () => ({ default: (await import("../notes/NoteFilters.tsx")).NoteFilters }));

/** Fewer are seen at once: nobody looks for one among them. */
const manyNotes = 6;

interface PaperMarginProps {
  sheet: PaperSheetProps;
  notes: readonly PlacedNote[];
  looked: FilteredNotes;
  walk: NoteWalk;
  views: LaidViews | null;
  onSlots: (slots: readonly NoteSlot[]) => void;
}

/** The notes beside the drawing, below the slips that ask for an answer. */
export const PaperMargin = ({ sheet, notes, looked, walk, views, onSlots }: PaperMarginProps) => (
  <NotesMargin
    heading={sheet.heading}
    remark={sheet.remark}
    notes={looked.left.notes}
    filters={
      notes.length < manyNotes ? null : (
        <Suspense fallback={null}>
          <NoteFilters
            notes={notes}
            left={looked.left.notes.length}
            filter={looked.filter}
            onFilter={looked.setFilter}
          />
        </Suspense>
      )
    }
    chosenNumber={walk.chosenNumber}
    onChoose={walk.chooseNumber}
    slip={
      <>
        <CutSlip {...sheet} />
        {sheet.slip}
      </>
    }
    after={sheet.after}
    footer={views === null ? undefined : sheet.footer?.(views.elevation.transform.pxPerM)}
    onSlots={onSlots}
  />
);

/** Where the section is cut, to be typed. */
const CutSlip = ({ scheme, eye: { section, storey, cutAlong } }: PaperSheetProps) =>
  section === null ? null : (
    <Suspense fallback={null}>
      <SectionSlip scheme={scheme} storey={storey} line={section} onLine={cutAlong} />
    </Suspense>
  );
