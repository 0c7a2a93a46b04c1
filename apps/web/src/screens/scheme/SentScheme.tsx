import { emptyScheme } from "@cornerway/schema";
import { useMemo, useState } from "react";
import { Ruled } from "../../controls/Ruled.tsx";
import { Trouble } from "../../controls/Trouble.tsx";
import { useRevision, useRevisions } from "../../data/revision.ts";
import { useRevisionChecks, useRevisionReport } from "../../checks/check-source.ts";
import { useChecks } from "../../checks/use-checks.tsx";
import { ChosenForces } from "../../forces/ChosenForces.tsx";
import { useForcesShown, withPath } from "../../forces/use-forces-shown.tsx";
import { choiceKeys } from "../../hand/step-choice.ts";
import { useLookingHand } from "../../hand/use-looking-hand.ts";
import { wholeWords } from "../../notes/notes-from-marks.ts";
import { noneAnswered, useMarkNotes } from "../../notes/use-mark-notes.ts";
import { PaperSheet } from "../../paper/PaperSheet.tsx";
import { useEye } from "../../paper/use-eye.ts";
import { KeysSlip, type KeyLine } from "../../room/KeysSlip.tsx";
import { MarginFoot } from "../../room/MarginFoot.tsx";
import { RoomSpine } from "../../room/RoomSpine.tsx";
import { RoomTitleBlock } from "../../room/RoomTitleBlock.tsx";
import { useRoom, whyNot } from "../../room/room-context.ts";
import { useSheetKeys } from "../../room/use-sheet-keys.ts";
import { Tray } from "../../sheet/Tray.tsx";
import { useForcesThread } from "../../worker/use-forces-thread.ts";
import { judgedRemark } from "../../worker/judged-so-far.ts";
import { SaveFile } from "./SaveFile.tsx";

const lookingKeyLines: readonly KeyLine[] = [
  [". and ,", "choose the next, the former thing"],
  ["Page Up, Page Down", "level"],
  ["V, Shift V", "next, former side of the building"],
  ["U", "the chosen container unfolded"],
  ["Enter", "the working of the chosen thing's governing check"],
];

/** Sheet 1 for those who see no draft: the last revision that was sent, only to look at. */
export function SentScheme() {
  const { project } = useRoom();
  const revision = useRevision(project.id, project.revision);
  const letters = (useRevisions(project.id).data ?? []).map(({ letter }) => letter);
  const scheme = revision.data?.scheme ?? emptyScheme;
  const eye = useEye(scheme);
  const hand = useLookingHand();
  const [noteId, chooseNote] = useState<string | null>(null);
  const [keysShown, showKeys] = useState(false);
  useSheetKeys({
    ...choiceKeys(scheme, hand.chosenId, hand.choose),
    PageUp: eye.up,
    PageDown: eye.down,
    Escape: () => (keysShown ? showKeys(false) : hand.choose(null)),
    "?": () => showKeys(!keysShown),
  });
  const report = useRevisionReport(project, revision.data);
  const forces = useForcesShown(scheme, report, useForcesThread());
  const { deflectedIn } = forces;
  const checks = useChecks(useRevisionChecks(project, revision.data), hand.chosenId, { deflectedIn });
  const result = revision.data?.result ?? null;
  const drawnOf = useMemo(() => withPath(result, forces.path), [result, forces.path]);
  const notes = useMarkNotes({
    ...{ scheme, marks: revision.data?.result?.marks, role: project.roles[0], offerOn: checks.offerOn },
  });
  if (revision.isError && revision.data === undefined)
    return <Trouble error={revision.error} again={() => void revision.refetch()} />;
  if (project.revision !== null && revision.isPending) return <Ruled label="Fetching the revision" />;
  const verdict = revision.data?.verdict ?? "not checked";
  return (
    <PaperSheet
      title={`Sheet 1, Scheme, ${project.name}`}
      eye={eye}
      hand={hand}
      scheme={scheme}
      laidBy={scheme}
      assessment={drawnOf}
      layer={forces.layer}
      answeredMarkIds={noneAnswered}
      revisionLetters={letters}
      heading={project.revision === null ? "Nothing was sent yet" : `Notes on revision ${project.revision}`}
      remark={judgedRemark(result)}
      notes={notes}
      slip={
        <>
          {checks.slip}
          <ChosenForces
            forces={forces.shown.stand ? (forces.shown.told?.forces ?? null) : null}
            scheme={scheme}
            report={report}
            chosenId={hand.chosenId}
            onOpen={checks.open}
          />
        </>
      }
      chosenNoteId={noteId}
      onNote={(note) => {
        chooseNote(note.id);
        hand.choose(note.elementId);
      }}
      after={forces.section}
      footer={(pxPerM) => (
        <>
          {project.revision === null ? null : <SaveFile projectId={project.id} letter={project.revision} />}
          <MarginFoot pxPerM={pxPerM} onKeys={() => showKeys(true)} />
        </>
      )}
      onField={
        <>
          {checks.paper}
          {keysShown ? <KeysSlip lines={lookingKeyLines} onClose={() => showKeys(false)} /> : null}
        </>
      }
      spine={<RoomSpine draftMoves={0} currentLetter={project.revision} />}
      tray={<Tray inHand={null} onTake={() => undefined} asleepBecause={whyNot(project, "draw")} />}
      titleBlock={
        <RoomTitleBlock
          sheet={1}
          scale="as noted"
          revision={project.revision}
          verdict={verdict}
          verdictLine={wholeWords(verdict)}
        />
      }
    />
  );
}
