import { lazy, Suspense, useEffect, useMemo, useState } from "react";
import type { DraftStore } from "../../data/draft/draft-store.ts";
import { useRevisions } from "../../data/revision.ts";
import { wholeWords } from "../../notes/notes-from-marks.ts";
import { noneAnswered } from "../../notes/use-mark-notes.ts";
import { PaperSheet } from "../../paper/PaperSheet.tsx";
import { RoomSpine } from "../../room/RoomSpine.tsx";
import { RoomTitleBlock } from "../../room/RoomTitleBlock.tsx";
import { useRoom, whyNot } from "../../room/room-context.ts";
import { useSheetKeys } from "../../room/use-sheet-keys.ts";
import { Tray } from "../../sheet/Tray.tsx";
import { DraftMargin } from "./DraftMargin.tsx";
import { drawingKeys } from "./drawing-keys.ts";
import { OnDraftField } from "./OnDraftField.tsx";
import { schemeKeys } from "./scheme-keys.ts";
import { useCarrying } from "./use-carrying.ts";
import { useDraftHand } from "./use-draft-hand.ts";
import { useDraftJudged } from "./use-draft-judged.ts";
import { useDraftNotes } from "./use-draft-notes.ts";
import { useDraftOthers } from "./use-draft-others.ts";

/** The foot of the margin comes beside the drawing. */
const DraftFooter = lazy(async () => ({ default: (await import("./DraftFooter.tsx")).DraftFooter }));

/** Sheet 1 with the draft on it: drawn on by the architect, watched by engineer and checker. */
export function DraftScheme({ store }: { store: DraftStore }) {
  const { project } = useRoom();
  const drawn = useDraftHand(store);
  const judged = useDraftJudged(drawn);
  const notes = useDraftNotes(drawn, judged);
  const { told, others, ghost } = useDraftOthers(drawn);
  const [noteId, chooseNote] = useState<string | null>(null);
  const [keysShown, showKeys] = useState(false);
  const letters = useLetters(project.id);
  const { draft, hand, eye, acts, mayDraw, edit } = drawn;
  const { assessment, assessed, forces } = judged;
  useSheetKeys(schemeKeys({ hand, eye, acts, showKeys, keysShown, draft: draft.scheme }));
  useEffect(() => drawingKeys(hand), [hand]);
  useCarrying(drawn);

  const empty = hand.shown.containers.length === 0;
  const verdict = assessment?.verdict ?? "not checked";
  return (
    <PaperSheet
      title={`Sheet 1, Scheme, ${project.name}`}
      {...{ eye, others, ghost, notes }}
      hand={told}
      scheme={hand.shown}
      laidBy={draft.scheme}
      aligns={mayDraw}
      assessment={judged.drawnOf}
      waiting={judged.waiting}
      layer={forces.layer}
      drawingRemark={assessment === null ? "not checked" : undefined}
      answeredMarkIds={noneAnswered}
      revisionLetters={letters}
      heading={empty ? "To begin" : mayDraw ? "Notes, as you draw" : "Notes on the draft"}
      remark={empty ? undefined : judged.remark}
      chosenNoteId={noteId}
      onNote={(note) => {
        chooseNote(note.id);
        hand.choose(note.elementId);
      }}
      slip={<DraftMargin {...{ drawn, judged }} noteChosen={noteId !== null} />}
      after={forces.section}
      footer={(pxPerM) => (
        <Suspense fallback={null}>
          <DraftFooter
            draft={draft}
            premium={empty ? null : (assessed?.premium ?? null)}
            undoes={hand.going === null ? edit.undoes : null}
            pxPerM={pxPerM}
            onKeys={() => showKeys(true)}
            onDraw={acts.draw}
          />
        </Suspense>
      )}
      spine={
        <RoomSpine draftMoves={draft.movesSinceRevision + draft.pending.length} currentLetter={project.revision} />
      }
      tray={<Tray inHand={hand.tool} onTake={hand.take} asleepBecause={whyNot(project, "draw")} />}
      titleBlock={
        <RoomTitleBlock
          sheet={1}
          scale="as noted"
          revision={null}
          verdict={verdict}
          verdictLine={empty ? "Nothing to check" : wholeWords(verdict)}
          remark={`${notes.length} ${notes.length === 1 ? "note" : "notes"}`}
        />
      }
      onField={<OnDraftField {...{ drawn, judged, keysShown }} onKeysAway={() => showKeys(false)} />}
    />
  );
}

/** The letters of the revisions sent so far. */
function useLetters(projectId: string): readonly string[] {
  const revisions = useRevisions(projectId).data;
  return useMemo(() => (revisions ?? []).map(({ letter }) => letter), [revisions]);
}
