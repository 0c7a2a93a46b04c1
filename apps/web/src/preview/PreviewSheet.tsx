import { useMemo, useState } from "react";
import { applyOperations, markSentences, type Assessment, type Scheme } from "@cornerway/schema";
import { TeachingDrawings } from "../drawing/empty/TeachingDrawings.tsx";
import type { Side } from "../drawing/contract.ts";
import { notesFromMarks } from "../notes/notes-from-marks.ts";
import { leaderAnchors, noteNumbers, placeNotes, type PlacedNote } from "../notes/placed-note.ts";
import { isometricPlace, type Detail } from "@cornerway/engine";
import { layViews } from "../paper/lay-views.ts";
import { useLenses } from "../paper/use-lenses.ts";
import { levelMarks } from "../paper/level-marks.ts";
import { SchemePaper } from "../paper/SchemePaper.tsx";
import type { FieldPlace, NoteSlot, ToolName } from "../sheet/contract.ts";
import { Key } from "../sheet/Key.tsx";
import { LeaderLayer } from "../sheet/LeaderLayer.tsx";
import { LevelStrip } from "../sheet/LevelStrip.tsx";
import { NotesMargin } from "../sheet/NotesMargin.tsx";
import { ReviewStamp } from "../sheet/ReviewStamp.tsx";
import { SheetFrame } from "../sheet/SheetFrame.tsx";
import { Slip } from "../sheet/Slip.tsx";
import { Spine } from "../sheet/Spine.tsx";
import { TitleBlock } from "../sheet/TitleBlock.tsx";
import { Tray } from "../sheet/Tray.tsx";
import "./preview.css";

type PreviewSheetProps = { scheme: Scheme; assessment: Assessment | null; review: boolean; storey: number; side: Side };

const noneAnswered: ReadonlySet<string> = new Set();
const noDetails: readonly Detail[] = [];
const noPlace: FieldPlace = { widthPx: 0, heightPx: 0, leftPx: 0, topPx: 0 };

/** A sheet put together from its parts without service or engine, to look at. */
export function PreviewSheet({ scheme, assessment, review, side, storey: storeyAtFirst }: PreviewSheetProps) {
  const [place, setPlace] = useState(noPlace);
  const [slots, setSlots] = useState<readonly NoteSlot[]>([]);
  const [tool, setTool] = useState<ToolName | null>("cut");
  const [storey, setStorey] = useState(storeyAtFirst);
  const [chosenId, setChosenId] = useState<string | null>(null);
  const [chosen, setChosen] = useState<number | null>(null);
  const laid = useMemo(() => layViews(place, scheme, side, storey), [place, scheme, side, storey]);
  const looking = useLenses(laid, side);
  const views = looking.views ?? laid;
  const notes = useMemo(() => notesOf(assessment, scheme, place, side), [assessment, scheme, place, side]);
  const proposed = useMemo(() => (review ? withTwoPosts(scheme) : undefined), [review, scheme]);
  return (
    <SheetFrame
      title="Sheet 1, Scheme, preview"
      spine={
        <Spine
          draftMoves={3}
          revisions={[
            { letter: "C", date: "10 Mar", entriesSince: 1 },
            { letter: "B", date: "19 Feb", entriesSince: 16 },
            { letter: "A", date: "28 Jan", entriesSince: 14 },
          ]}
          currentLetter="C"
          entriesBefore={9}
          entries={49}
        />
      }
      levels={<LevelStrip levels={levelMarks(scheme, views)} chosenStorey={storey} onChoose={setStorey} />}
      tray={<Tray inHand={tool} onTake={setTool} asleepBecause={review ? "Only the architect draws" : undefined} />}
      field={(field) => (
        <>
          <PlaceTold field={field} place={place} tell={setPlace} />
          <SchemePaper
            field={place}
            views={views}
            looking={looking}
            picture={isometricPlace}
            onPicture={() => undefined}
            onPictureHome={() => undefined}
            section={null}
            firstSection={() => null}
            rested={scheme}
            handIn={null}
            onSection={() => undefined}
            details={noDetails}
            detailed={false}
            onDetails={() => undefined}
            scheme={scheme}
            assessment={assessment}
            side={side}
            storey={storey}
            chosenId={chosenId}
            noteNumbers={noteNumbers(notes)}
            answeredMarkIds={noneAnswered}
            revisionLetters={["A", "B", "C"]}
            proposed={proposed}
            isometric
            inHand={false}
            onPress={(picked) => setChosenId(picked?.id ?? null)}
            onMove={() => undefined}
            onDrop={() => undefined}
            onFocusElement={setChosenId}
            onSide={() => undefined}
            onCancel={() => undefined}
          />
          {scheme.containers.length === 0 && (
            <div className="preview-lessons">
              <TeachingDrawings />
            </div>
          )}
        </>
      )}
      margin={
        <NotesMargin
          heading={review ? "Review" : "Notes, as you draw"}
          remark="214 questions · load path only"
          notes={notes}
          chosenNumber={chosen}
          onChoose={setChosen}
          onSlots={setSlots}
          slip={review ? <RequestSlip /> : undefined}
          footer={<Key pxPerM={views.elevation.transform.pxPerM} />}
        />
      }
      titleBlock={
        <TitleBlock
          projectName="Sluice Row Workshop"
          subtitle="Two Bridges Trust · Fenquill"
          sheet={review ? 3 : 1}
          scale="as noted"
          date="10 Mar 2027"
          revision="C"
          verdict="does not work"
          verdictLine="Does not work yet"
          remark="1 of 5 notes"
          onSheet={() => undefined}
          onProject={() => undefined}
          asleepSheets={
            new Map([
              [2, "Openings are not drawn yet"],
              [4, "Compare is not drawn yet"],
              [6, "Calculations are not drawn yet"],
            ])
          }
        />
      }
      overlay={<LeaderLayer anchors={leaderAnchors(notes)} slots={slots} chosenNumber={chosen} />}
    />
  );
}

/** The size of the field, told to the sheet once it is laid out. */
function PlaceTold({
  field,
  place,
  tell,
}: {
  field: FieldPlace;
  place: FieldPlace;
  tell: (place: FieldPlace) => void;
}) {
  if (field !== place) queueMicrotask(() => tell(field));
  return null;
}

function notesOf(assessment: Assessment | null, scheme: Scheme, place: FieldPlace, side: Side): PlacedNote[] {
  if (assessment === null || place.widthPx === 0) return [];
  const names = new Map(
    [...scheme.containers, ...scheme.openings, ...scheme.posts, ...scheme.pads].map(({ id, tag }) => [id, tag]),
  );
  const unplaced = notesFromMarks({
    marks: assessment.marks,
    written: [],
    placeOf: () => null,
    nameOf: (id) => names.get(id) ?? id,
    say: (mark) => markSentences(mark, names, "architect"),
    answered: new Set(),
    offerOn: () => ({ label: "Open its working", onPress: () => undefined }),
  });
  return placeNotes(unplaced, {
    scheme,
    side,
    storey: 1,
    views: layViews(place, scheme, side, 1),
    field: place,
    isometric: true,
    picture: isometricPlace,
  });
}

function withTwoPosts(scheme: Scheme): Scheme {
  const post = (id: string, xUm: number) => ({
    id,
    tag: id.toUpperCase(),
    xUm,
    yUm: 90_000,
    baseZUm: 0,
    topZUm: 5_792_000,
    turnMdeg: 0,
    section: "HSS 102×102×6.4",
  });
  const pad = (id: string, xUm: number) => ({
    id,
    tag: id.toUpperCase(),
    xUm,
    yUm: 90_000,
    topZUm: 0,
    lengthUm: 700_000,
    widthUm: 700_000,
    depthUm: 420_000,
    turnMdeg: 0,
  });
  const applied = applyOperations(scheme, [
    { kind: "post.set", post: post("q1", 6_223_000) },
    { kind: "post.set", post: post("q2", 8_482_000) },
    { kind: "pad.set", pad: pad("q3", 6_223_000) },
    { kind: "pad.set", pad: pad("q4", 8_482_000) },
  ]);
  if (!applied.ok) throw new Error(`preview request refused: ${applied.refusal.reason}`);
  return applied.scheme;
}

function RequestSlip() {
  return (
    <Slip label="Change request 3" author="A. Vale, 11 Mar" hand="engineer" number={9}>
      <p className="sentence">Two posts under T1, on grids 3 and 4, from T1’s rail down to pads of their own.</p>
      <button type="button" className="command command-next">
        Take it in <kbd>A</kbd>
      </button>{" "}
      <button type="button" className="command">
        Decline, with a reason
      </button>
      <div className="preview-stamps">
        <ReviewStamp
          state="choosing"
          revision="C"
          subject="Revision C"
          chosen="Revise and resubmit"
          onChoose={() => undefined}
          next={{
            "No exceptions taken": "To the permit set, as it is.",
            "Make corrections noted": "On, with notes 1 and 2 in.",
            "Revise and resubmit": "Back to me as revision D.",
            Rejected: "Stops here.",
          }}
          asleepBecause={{
            "No exceptions taken": "2 marks do not work.",
            "Make corrections noted": "2 marks do not work.",
          }}
          signer="Anna Vale"
          text=""
          onText={() => undefined}
          onPress={() => undefined}
        />
        <ReviewStamp
          state="pressed"
          disposition="Revise and resubmit"
          revision="B"
          date="24 Feb 2027"
          signer="A. Vale"
        />
      </div>
    </Slip>
  );
}
