import type { Revision, Thread } from "@cornerway/schema";
import { answeredMarks, applyOperations } from "@cornerway/schema";
import { lazy, Suspense, useMemo, useState } from "react";
import { readsChecks, useRevisionChecks, useRevisionReport } from "../../checks/check-source.ts";
import { useChecks } from "../../checks/use-checks.tsx";
import { Ruled } from "../../controls/Ruled.tsx";
import { useCostBook } from "../../data/cost-book.ts";
import { useRevisions } from "../../data/revision.ts";
import { useForcesShown, withPath } from "../../forces/use-forces-shown.tsx";
import { useHand } from "../../hand/use-hand.ts";
import { wholeWords } from "../../notes/notes-from-marks.ts";
import { useMarkNotes } from "../../notes/use-mark-notes.ts";
import { PaperSheet } from "../../paper/PaperSheet.tsx";
import { useEye } from "../../paper/use-eye.ts";
import { useRemediesSlip } from "../../remedies/use-remedies-slip.tsx";
import { MarginFoot } from "../../room/MarginFoot.tsx";
import { RoomSpine } from "../../room/RoomSpine.tsx";
import { RoomTitleBlock } from "../../room/RoomTitleBlock.tsx";
import { useRoom, whyNot } from "../../room/room-context.ts";
import { useSheetKeys } from "../../room/use-sheet-keys.ts";
import { Tray } from "../../sheet/Tray.tsx";
import { reviewKeyLines, reviewKeys } from "./review-keys.ts";
import { useSettleOffers } from "./use-settle-offers.ts";
import { whoseTurn } from "../../wording/whose-turn.ts";
import { isLater } from "../../wording/next-letter.ts";
import { AssessmentLine } from "../../room/AssessmentLine.tsx";
import { StampPlace } from "./StampPlace.tsx";
import { useLookingPresence } from "../../room/use-looking-presence.ts";
import { useForcesThread } from "../../worker/use-forces-thread.ts";
import { judgedRemark } from "../../worker/judged-so-far.ts";
import { useRequestDraft } from "./use-request-draft.ts";

/** What is asked and answered comes beside the drawing. */
const KeysSlip = lazy(async () => ({ default: (await import("../../room/KeysSlip.tsx")).KeysSlip }));
const ReviewSlips = lazy(async () => ({ default: (await import("./ReviewSlips.tsx")).ReviewSlips }));

export interface ReviewOfProps {
  revision: Revision;
  thread: Thread;
  /** True for the last revision sent: only that one is answered and stamped. */
  current: boolean;
  onRevision: (letter: string | null) => void;
}

/** One revision under review: marks and words on the drawing, requests as proposed steel, and the stamp. */
export function ReviewOf({ revision, thread, current, onRevision }: ReviewOfProps) {
  const { project, me } = useRoom();
  const { scheme, result, letter } = revision;
  const eye = useEye(scheme);
  const request = useRequestDraft(scheme);
  const [cannot, setCannot] = useState<string | null>(null);
  const [noteId, chooseNote] = useState<string | null>(null);
  const [keysShown, showKeys] = useState(false);
  const letters = (useRevisions(project.id).data ?? []).map((each) => each.letter);
  const hand = useHand({
    scheme: request.proposed,
    draw: request.draw,
    cannot: setCannot,
    mayDraw: request.open,
    side: eye.side,
  });
  useLookingPresence(3, hand.chosenId);

  const open = thread.requests.filter((each) => each.state === "open" && each.revision === letter);
  const asked = useMemo(() => open.flatMap(({ operations }) => operations), [open]);
  const proposed = request.open ? hand.shown : proposedScheme(scheme, asked);
  const written = useMemo(
    () => thread.notes.filter((note) => note.revision === null || !isLater(note.revision, letter)),
    [thread.notes, letter],
  );
  const answered = useMemo(() => answeredMarks(written, letter), [written, letter]);
  const forces = useForcesShown(scheme, useRevisionReport(project, revision), useForcesThread());
  const { deflectedIn } = forces;
  const checks = useChecks(useRevisionChecks(project, revision), hand.chosenId, {
    inHand: hand.held !== null,
    deflectedIn,
  });
  const drawnOf = useMemo(() => withPath(result, forces.path), [result, forces.path]);
  const ways = useRemediesSlip({
    ...{ scheme, book: useCostBook(project).data?.book ?? null, plain: !readsChecks(project.roles) },
    take: {
      label: "Ask for it",
      onTake: (operations) => {
        if (!request.open) request.begin();
        request.draw(operations);
      },
      asleepBecause: whyNot(project, "make-request") ?? (current ? undefined : "A later revision is under review."),
    },
  });
  const notes = useMarkNotes({
    ...{ scheme, marks: result?.marks, written, answered },
    ...{ role: project.roles[0], offerOn: checks.offerOn, quietOfferOn: ways.offerOn },
  });
  const offered = useSettleOffers(notes, thread.notes);
  const chosenNote = notes.find(({ id }) => id === noteId) ?? null;

  useSheetKeys(reviewKeys({ hand, eye, request, keysShown, showKeys }));

  return (
    <PaperSheet
      title={`Sheet 3, Review, ${project.name}, revision ${letter}`}
      eye={eye}
      hand={{
        ...hand,
        pressAt: (picked, point, assessment) => {
          if (!request.open || hand.tool === null) chooseNote(null);
          hand.pressAt(picked, point, assessment);
        },
      }}
      scheme={scheme}
      laidBy={request.open ? request.proposed : proposed}
      assessment={drawnOf}
      layer={forces.layer}
      proposed={proposed === scheme ? undefined : proposed}
      drawingRemark={proposed === scheme ? undefined : "proposed"}
      answeredMarkIds={answered}
      revisionLetters={letters}
      heading={`Revision ${letter}, from ${revision.sentBy.name}`}
      remark={judgedRemark(result) ?? "not checked yet"}
      notes={offered}
      chosenNoteId={noteId}
      onNote={(note) => {
        chooseNote(note.id);
        hand.choose(note.elementId);
      }}
      isometric={revision.stamp === null}
      slip={
        <>
          {checks.slip}
          {ways.slip}
          <Suspense fallback={<Ruled label="Laying out what is asked" />}>
            <ReviewSlips
              revision={revision}
              requests={thread.requests.filter((each) => each.revision === letter)}
              notes={thread.notes}
              current={current}
              chosenId={hand.chosenId}
              view={eye.unfoldedId === null ? `${eye.side} elevation` : "unfolded wall"}
              chosenNote={chosenNote}
              request={request}
              cannot={cannot}
              onAway={() => setCannot(null)}
            />
          </Suspense>
        </>
      }
      after={forces.section}
      footer={(pxPerM) => <MarginFoot pxPerM={pxPerM} onKeys={() => showKeys(true)} />}
      spine={<RoomSpine draftMoves={0} currentLetter={letter} onChoose={onRevision} />}
      tray={
        <Tray
          inHand={hand.tool}
          onTake={hand.take}
          asleepBecause={
            request.open
              ? undefined
              : (whyNot(project, "make-request") ?? "Ask for a change first; then the tools draw it.")
          }
        />
      }
      titleBlock={
        <RoomTitleBlock
          sheet={3}
          scale="as noted"
          revision={letter}
          verdict={revision.verdict}
          verdictLine={wholeWords(revision.verdict)}
          remark={current ? whoseTurn(project) : undefined}
        />
      }
      onField={
        <>
          {checks.paper}
          <AssessmentLine project={project} letter={letter} />
          <StampPlace
            revision={revision}
            current={current}
            signer={me.name}
            chosenId={hand.chosenId}
            onCannot={setCannot}
          />
          {keysShown ? (
            <Suspense fallback={null}>
              <KeysSlip lines={reviewKeyLines} onClose={() => showKeys(false)} />
            </Suspense>
          ) : null}
        </>
      }
    />
  );
}

function proposedScheme(
  scheme: Revision["scheme"],
  operations: Parameters<typeof applyOperations>[1],
): Revision["scheme"] {
  if (operations.length === 0) return scheme;
  const applied = applyOperations(scheme, operations);
  return applied.ok ? applied.scheme : scheme;
}
