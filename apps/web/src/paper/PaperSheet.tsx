import { smallBelowPxPerM } from "../drawing/elevation/small-view.ts";
import { lazy, Suspense, useMemo, useRef, useState } from "react";
import { LevelStrip } from "../sheet/LevelStrip.tsx";
import { SheetFrame } from "../sheet/SheetFrame.tsx";
import type { NoteSlot } from "../sheet/contract.ts";
import { FieldTeller } from "./FieldTeller.tsx";
import { levelMarks } from "./level-marks.ts";
import { PaperField } from "./PaperField.tsx";
import { PaperMargin } from "./PaperMargin.tsx";
import type { PaperSheetProps } from "./paper-sheet-props.ts";
import { useField } from "./use-field.ts";
import { useNoteFilter } from "./use-note-filter.ts";
import { useLettered } from "./use-lettered.ts";
import { useNotesOnViews } from "./use-notes-on-views.ts";
import { useNoteWalk } from "./use-note-walk.ts";
import { usePaperKeys } from "./use-paper-keys.ts";
import { useSeenPaper } from "./use-seen-paper.ts";

/** Notes come with the engine's answer, and their leaders with them. */
const LeaderLayer = lazy(async () => ({ default: (await import("../sheet/LeaderLayer.tsx")).LeaderLayer }));

/** A sheet with the three views of one scheme and numbered notes tied to it by leaders. */
export function PaperSheet(props: PaperSheetProps) {
  const { eye, scheme } = props;
  const { field, onField } = useField();
  const seen = useSeenPaper(props, field);
  const { views } = seen.looking;
  const { notes, numbers, anchors } = useNotesOnViews(props, seen);
  const looked = useNoteFilter({ notes, anchors });
  const walk = useNoteWalk(props, looked.left.notes, seen.looking);
  const [slots, setSlots] = useState<readonly NoteSlot[]>([]);
  const overlay = useRef<SVGGElement>(null);
  const { layer } = props;
  // Strands come after the notes, and lettering keeps off them.
  const stood = useLettered(
    overlay,
    useMemo(() => ({ notes, layer }), [notes, layer]),
  );
  usePaperKeys(props, seen, walk);
  return (
    <SheetFrame
      title={props.title}
      titleBlock={props.titleBlock}
      spine={props.spine}
      tray={props.tray}
      levels={
        views === null || eye.unfoldedId !== null ? null : (
          <LevelStrip levels={levelMarks(scheme, views)} chosenStorey={eye.storey} onChoose={eye.cutAt} />
        )
      }
      field={(place) => (
        <FieldTeller field={place} onField={onField}>
          {views === null ? null : (
            <PaperField
              sheet={props}
              field={place}
              views={views}
              seen={seen}
              noteNumbers={numbers}
              onFocusElement={walk.focus}
            />
          )}
          {props.onField}
        </FieldTeller>
      )}
      margin={<PaperMargin sheet={props} {...{ notes, looked, walk, views }} onSlots={setSlots} />}
      overlay={
        <g ref={overlay}>
          {looked.left.anchors.length === 0 ? null : (
            <Suspense fallback={null}>
              <LeaderLayer
                anchors={looked.left.anchors}
                slots={slots}
                chosenNumber={walk.chosenNumber}
                {...stood}
                small={views !== null && views.elevation.transform.pxPerM < smallBelowPxPerM}
              />
            </Suspense>
          )}
        </g>
      }
    />
  );
}
