import { useMemo, useState } from "react";
import { applyOperations, type Assessment, type Scheme } from "@cornerway/schema";
import { ElevationView } from "../drawing/elevation/ElevationView.tsx";
import { levelsOf } from "../drawing/elevation/elevation-model.ts";
import { TeachingDrawings } from "../drawing/empty/TeachingDrawings.tsx";
import { IsometricView } from "../drawing/isometric/IsometricView.tsx";
import { markAnchors } from "../drawing/marks/mark-anchors.ts";
import { yToPx } from "../drawing/paper-to-px.ts";
import { PlanView } from "../drawing/plan/PlanView.tsx";
import { ViewTitle } from "../drawing/ViewTitle.tsx";
import type { Side } from "../drawing/contract.ts";
import { layViews } from "../paper/lay-views.ts";
import type { FieldPlace, NoteSlot, SheetNote, ToolName } from "../sheet/contract.ts";
import { Key } from "../sheet/Key.tsx";
import { layNotes } from "../sheet/lay-notes.ts";
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

const noPlace: FieldPlace = { widthPx: 0, heightPx: 0, leftPx: 0, topPx: 0 };

/** A sheet put together from its parts without service or engine, to look at. */
export function PreviewSheet({ scheme, assessment, review, side, storey: storeyAtFirst }: PreviewSheetProps) {
  const [place, setPlace] = useState(noPlace);
  const [slots, setSlots] = useState<readonly NoteSlot[]>([]);
  const [tool, setTool] = useState<ToolName | null>("cut");
  const [storey, setStorey] = useState(storeyAtFirst);
  const [chosen, setChosen] = useState<number | null>(null);
  const [hovered, setHovered] = useState<string | null>(null);
  const views = useMemo(() => layViews(place, scheme, side), [place, scheme, side]);
  const notes = useMemo(() => notesOf(assessment, scheme, place, side), [assessment, scheme, place, side]);
  const proposed = useMemo(() => (review ? withTwoPosts(scheme) : undefined), [review, scheme]);
  const anchors = notes.flatMap(({ number, anchor }) => (anchor === null ? [] : [{ ...anchor, number }]));
  const shared = { scheme, assessment, proposed, hoveredId: hovered, onElementPointerEnter: setHovered, onElementPointerLeave: () => setHovered(null) };
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
      levels={
        <LevelStrip
          levels={levelsOf(scheme).map((level) => ({ ...level, yPx: yToPx(views.elevation.transform, level.zMm) }))}
          chosenStorey={storey}
          onChoose={setStorey}
        />
      }
      tray={<Tray inHand={tool} onTake={setTool} asleepBecause={review ? "Only the architect draws" : undefined} />}
      field={(field) => (
        <>
          <PlaceTold field={field} place={place} tell={setPlace} />
          <svg className="field">
            <ElevationView {...shared} transform={views.elevation.transform} side={side} levelLinesFromPx={0} figures />
            <PlanView {...shared} transform={views.plan.transform} storey={storey} />
            <IsometricView {...shared} transform={views.isometric.transform} />
            <ViewTitle number={1} title={`${side} elevation`} remark="1:100 · stroke width is force, dead and imposed" xPx={28} yPx={views.plan.rect.topPx - 20} />
            <ViewTitle number={2} title="Plan, first floor" remark="1:200 · cut at +4.10" xPx={28} yPx={place.heightPx - 24} />
            <ViewTitle number={3} title="From the south-east" remark="isometric · not to scale" xPx={views.isometric.rect.leftPx + 10} yPx={place.heightPx - 24} />
          </svg>
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
          projectName="Weir Street Workshop"
          subtitle="Two Bridges Trust · Marlow Ferry"
          sheet={review ? 3 : 1}
          scale="as noted"
          date="10 Mar 2027"
          revision="C"
          verdict="does not work"
          verdictLine="Does not work yet"
          remark="1 of 5 notes"
          onSheet={() => undefined}
          onProject={() => undefined}
          asleepSheets={new Map([[2, "Openings are not drawn yet"], [4, "Compare is not drawn yet"], [6, "Calculations are not drawn yet"]])}
        />
      }
      overlay={<LeaderLayer anchors={anchors} slots={slots} chosenNumber={chosen} />}
    />
  );
}

/** The size of the field, told to the sheet once it is laid out. */
function PlaceTold({ field, place, tell }: { field: FieldPlace; place: FieldPlace; tell: (place: FieldPlace) => void }) {
  if (field !== place) queueMicrotask(() => tell(field));
  return null;
}

function notesOf(assessment: Assessment | null, scheme: Scheme, place: FieldPlace, side: Side): SheetNote[] {
  if (assessment === null || place.widthPx === 0) return [];
  const views = layViews(place, scheme, side);
  const anchors = markAnchors(assessment.marks, scheme, { side, elevation: views.elevation.transform, isometric: views.isometric.transform });
  const unlaid = assessment.marks.map((mark) => {
    const at = anchors.get(mark.id);
    const { verdict } = mark;
    return {
      markIds: [mark.id],
      verdict,
      screening: true,
      body: sentences[mark.fact.kind] ?? `${mark.elements.join(", ").toUpperCase()}: ${mark.fact.kind}.`,
      greyLine: verdict === "works with steel" ? "61 kg of steel · $3,250" : undefined,
      offer: verdict === "does not work" ? { label: "Move D3 0.85 m east", key: "M", onPress: () => undefined } : undefined,
      quietOffer: verdict === "does not work" ? { label: "Other ways", onPress: () => undefined } : undefined,
      comments: verdict === "needs the engineer" ? [question] : [],
      anchor: at === undefined ? null : { ...at, xPx: at.xPx + place.leftPx, yPx: at.yPx + place.topPx },
    };
  });
  const span = { xPx: place.leftPx + place.widthPx, topPx: place.topPx + 80, footPx: place.topPx + place.heightPx * 0.6 };
  return layNotes(unlaid, span, (verdict, notes) => ({ heading: `${verdict}, ${notes.length}`, body: notes.map(({ body }) => body).join(" ").slice(0, 160) }));
}

const question = {
  id: "1",
  text: "Two posts under T1, from its rail to pads of their own.",
  authorName: "A. Vale",
  role: "engineer",
  at: "11 Mar 16:20",
  settled: false,
} as const;

const sentences: Readonly<Record<string, string>> = {
  "load-over-opening": "Door D3 is cut where the load of T1 comes down. Nothing is left beneath it.",
  "borne-on-rail": "T1 crosses F1 at grids 3 and 4, away from every corner. 66 kN comes down on each crossing.",
  overhang: "F1 runs 3.00 m past grid 5. The load comes down on G1's corner and needs a seat.",
  "post-carries": "F1's west corner lands on the jamb of D1. Post J1 takes 102 kN to a pad of its own.",
  "opening-in-sheet": "W2 leaves the posts and rails of F1 whole. What it does to the sheet is not judged yet.",
};

function withTwoPosts(scheme: Scheme): Scheme {
  const post = (id: string, xUm: number) => ({ id, tag: id.toUpperCase(), xUm, yUm: 90_000, baseZUm: 0, topZUm: 5_792_000, turnMdeg: 0, section: "HSS 102×102×6.4" });
  const pad = (id: string, xUm: number) => ({ id, tag: id.toUpperCase(), xUm, yUm: 90_000, topZUm: 0, lengthUm: 700_000, widthUm: 700_000, depthUm: 420_000, turnMdeg: 0 });
  const applied = applyOperations(scheme, [
    { kind: "post.set", post: post("q1", 6_223_000) },
    { kind: "post.set", post: post("q2", 8_482_000) },
    { kind: "pad.set", pad: pad("b7", 6_223_000) },
    { kind: "pad.set", pad: pad("b8", 8_482_000) },
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
          next={{ "No exceptions taken": "To the permit set, as it is.", "Make corrections noted": "On, with notes 1 and 2 in.", "Revise and resubmit": "Back to me as revision D.", Rejected: "Stops here." }}
          asleepBecause={{ "No exceptions taken": "No strength is judged yet.", "Make corrections noted": "No strength is judged yet." }}
          signer="Anna Vale"
          text=""
          onText={() => undefined}
          onPress={() => undefined}
        />
        <ReviewStamp state="pressed" disposition="Revise and resubmit" revision="B" date="24 Feb 2027" signer="A. Vale" />
      </div>
    </Slip>
  );
}
