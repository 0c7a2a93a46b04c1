import { may } from "@cornerway/schema";
import { lazy, Suspense, useEffect, useMemo, useState } from "react";
import { useCostBook } from "../../data/cost-book.ts";
import { useDraft } from "../../data/draft/use-draft.ts";
import type { DraftStore } from "../../data/draft/draft-store.ts";
import { useRevisions } from "../../data/revision.ts";
import { useThread } from "../../data/thread.ts";
import { handsAt } from "../../drawing/others/other-hands.ts";
import { isLifted } from "../../hand/lift.ts";
import { useHand } from "../../hand/use-hand.ts";
import { wholeWords } from "../../notes/notes-from-marks.ts";
import { noneAnswered, useMarkNotes } from "../../notes/use-mark-notes.ts";
import type { PlacedNote } from "../../notes/placed-note.ts";
import { PaperSheet } from "../../paper/PaperSheet.tsx";
import { useEye } from "../../paper/use-eye.ts";
import { useRested } from "../../paper/use-rested.ts";
import { RoomSpine } from "../../room/RoomSpine.tsx";
import { RoomTitleBlock } from "../../room/RoomTitleBlock.tsx";
import { useRoom, whyNot } from "../../room/room-context.ts";
import { useSheetKeys } from "../../room/use-sheet-keys.ts";
import { Tray } from "../../sheet/Tray.tsx";
import { Typing } from "../../twin/typing.ts";
import { useForcesShown, withPath } from "../../forces/use-forces-shown.tsx";
import { readsChecks, useDraftChecks } from "../../checks/check-source.ts";
import { useChecks } from "../../checks/use-checks.tsx";
import { useRemediesSlip } from "../../remedies/use-remedies-slip.tsx";
import { useAssessment } from "../../worker/use-assessment.ts";
import { judgedSoFar } from "../../worker/judged-so-far.ts";
import { useStrength } from "../../worker/use-strength.ts";
import { BringIn } from "./BringIn.tsx";
import { DraftFooter } from "./DraftFooter.tsx";
import { DraftSlips } from "./DraftSlips.tsx";
import { drawingKeys } from "./drawing-keys.ts";
import { EmptySheet } from "./EmptySheet.tsx";
import { conflictGhost } from "./conflict-ghost.ts";
import { useOthersGhost } from "./others-ghost.ts";
import { schemeKeys } from "./scheme-keys.ts";
import { useDraftActs } from "./use-draft-acts.ts";
import { usePresence } from "./use-presence.ts";
import { useSayMove } from "./use-say-move.ts";
import { useStanding } from "./use-standing.ts";
import { useUndoes } from "./use-undoes.tsx";

const ChosenForces = lazy(async () => ({ default: (await import("../../forces/ChosenForces.tsx")).ChosenForces }));
const SchemeKeysSlip = lazy(async () => ({ default: (await import("./SchemeKeysSlip.tsx")).SchemeKeysSlip }));
const Tour = lazy(async () => ({ default: (await import("./tour/Tour.tsx")).Tour }));

/** Sheet 1 with the draft on it: drawn on by the architect, watched by engineer and checker. */
export function DraftScheme({ store }: { store: DraftStore }) {
  const { project, here, me } = useRoom();
  const draft = useDraft(store);
  const acts = useDraftActs(store);
  const eye = useEye(draft.scheme);
  const [keysShown, showKeys] = useState(false);
  const [noteId, chooseNote] = useState<string | null>(null);
  const revisions = useRevisions(project.id).data;
  const letters = useMemo(() => (revisions ?? []).map(({ letter }) => letter), [revisions]);
  const mayDraw = may(project.roles, "draw");
  const { standing, hear } = useStanding();
  const hand = useHand({
    ...{ scheme: draft.scheme, draw: acts.draw, cannot: acts.setCannot, mayDraw, side: eye.side },
    ...{ standing, lifts: true },
  });
  const book = useCostBook(project).data?.book ?? null;
  const { assessed, waiting } = useAssessment(hand.shown, book, hand.lift.atRest);
  useEffect(() => hear(assessed), [hear, assessed]);
  const { typing, watch, undoes } = useUndoes(draft.scheme, hand);
  const shown = hand.shown;
  const isDragging = (hand.lifted || hand.operations.length > 0) && hand.held?.kind !== "unit";
  const strength = useStrength(shown, hand.held !== null, hand.lift.atRest);
  const { assessment, marks, waitingIds, remark } = useMemo(
    () => judgedSoFar(assessed?.assessment ?? null, strength, shown),
    [assessed, strength, shown],
  );
  const checks = useChecks(useDraftChecks(strength), hand.chosenId, hand.held !== null);

  const report = strength.stands ? (strength.judged?.report ?? null) : null;
  const forces = useForcesShown(shown, report, strength);
  const drawnOf = useMemo(() => withPath(assessment, forces.path), [assessment, forces.path]);

  const ways = useRemediesSlip({
    ...{ scheme: draft.scheme, book, plain: !readsChecks(project.roles) },
    take: { label: "Draw it so", onTake: acts.draw, asleepBecause: whyNot(project, "draw") },
  });

  const pointAt = usePresence(1, hand);
  const others = useMemo(() => handsAt(here, me.id, 1), [here, me.id]);
  const othersGhost = useOthersGhost(draft.scheme);
  useSayMove(acts.drawn, assessed, draft.scheme);
  const thread = useThread(project.id).data;
  const written = useMemo(() => (thread?.notes ?? []).filter(({ settledAt }) => settledAt === null), [thread]);
  const spoken = useMemo(() => ({ scheme: shown, marks, waiting: waitingIds }), [shown, marks, waitingIds]);
  const notes = useMarkNotes({
    ...useRested(spoken, hand.held !== null && !isLifted(hand.held)),
    ...{ written, role: project.roles[0], offerOn: checks.offerOn, quietOfferOn: ways.offerOn },
  });
  const toNote = (note: PlacedNote) => {
    chooseNote(note.id);
    hand.choose(note.elementId);
  };
  useSheetKeys(schemeKeys({ hand, eye, acts, showKeys, keysShown, draft: draft.scheme }));
  useEffect(() => drawingKeys(hand), [hand]);

  const empty = shown.containers.length === 0;
  const verdict = assessment?.verdict ?? "not checked";
  return (
    <PaperSheet
      title={`Sheet 1, Scheme, ${project.name}`}
      eye={eye}
      hand={{
        ...hand,
        moveTo: (point) => {
          pointAt({ projection: point.projection, at: point.at });
          hand.moveTo(point);
        },
      }}
      others={others}
      scheme={shown}
      laidBy={draft.scheme}
      aligns={mayDraw}
      assessment={drawnOf}
      waiting={waiting}
      layer={forces.layer}
      ghost={conflictGhost(draft) ?? (isDragging ? draft.scheme : othersGhost)}
      drawingRemark={assessment === null ? "not checked" : undefined}
      answeredMarkIds={noneAnswered}
      revisionLetters={letters}
      heading={empty ? "To begin" : mayDraw ? "Notes, as you draw" : "Notes on the draft"}
      remark={empty ? undefined : remark}
      notes={notes}
      chosenNoteId={noteId}
      onNote={toNote}
      slip={
        <>
          <Suspense fallback={null}>
            <Tour draft={draft} noteChosen={noteId !== null} />
          </Suspense>
          {checks.slip}
          {ways.slip}
          <Suspense fallback={null}>
            <ChosenForces
              forces={forces.shown.stand ? (forces.shown.told?.forces ?? null) : null}
              scheme={shown}
              report={report}
              chosenId={hand.chosenId}
              onOpen={checks.open}
            />
          </Suspense>
          <Typing value={typing}>
            <DraftSlips
              {...{ store, draft, hand, acts, undoes }}
              standing={standing(hand.going ?? [])}
              broke={assessed?.broke ?? null}
            />
          </Typing>
        </>
      }
      after={forces.section}
      footer={(pxPerM) => (
        <DraftFooter
          draft={draft}
          premium={empty ? null : (assessed?.premium ?? null)}
          undoes={hand.going === null ? undoes : null}
          pxPerM={pxPerM}
          onKeys={() => showKeys(true)}
          onDraw={acts.draw}
        />
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
      onField={
        <>
          {empty && hand.tool === null ? (
            <EmptySheet onSet={() => hand.take("stack")} asleepBecause={whyNot(project, "draw")}>
              <BringIn scheme={draft.scheme} onDraw={acts.draw} asleepBecause={whyNot(project, "draw")} />
            </EmptySheet>
          ) : null}
          {watch}
          {checks.paper}
          {keysShown ? (
            <Suspense fallback={null}>
              <SchemeKeysSlip onClose={() => showKeys(false)} />
            </Suspense>
          ) : null}
        </>
      }
    />
  );
}
