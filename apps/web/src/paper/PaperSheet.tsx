import type { Assessment, Scheme } from "@cornerway/schema";
import { lazy, Suspense, useMemo, useRef, useState } from "react";
import type { ReactNode } from "react";
import { laterPart } from "../controls/later-part.ts";
import type { ViewLayer } from "../drawing/contract.ts";
import type { OtherHands } from "../drawing/others/other-hands.ts";
import { AlsoChosen } from "../drawing/also-chosen.ts";
import { isLifted } from "../hand/lift.ts";
import type { PointingHand } from "../hand/use-looking-hand.ts";
import { project, toScreen } from "../drawing/view-transform.ts";
import { elementPlace } from "../notes/element-place.ts";
import { leaderAnchors, noteNumbers, placeNotes, seenNotes } from "../notes/placed-note.ts";
import type { PlacedNote, UnplacedNote } from "../notes/placed-note.ts";
import { useKeys } from "../keys/use-keys.ts";
import { LevelStrip } from "../sheet/LevelStrip.tsx";
import { NotesMargin } from "../sheet/NotesMargin.tsx";
import { SheetFrame } from "../sheet/SheetFrame.tsx";
import type { NoteSlot } from "../sheet/contract.ts";
import { FieldTeller } from "./FieldTeller.tsx";
import { isPlain } from "./lens.ts";
import type { LaidViews } from "./lay-views.ts";
import { layViews } from "./lay-views.ts";
import { levelMarks } from "./level-marks.ts";
import { showsDetails } from "./shows-details.ts";
import { SchemePaper } from "./SchemePaper.tsx";
import { useLettered } from "./use-lettered.ts";
import { lensKeys, useLenses } from "./use-lenses.ts";
import { useField, type Field } from "./use-field.ts";
import { useRested } from "./use-rested.ts";
import type { Eye } from "./use-eye.ts";

/** Notes come with the engine's answer, and their leaders with them. */
const LeaderLayer = lazy(async () => ({ default: (await import("../sheet/LeaderLayer.tsx")).LeaderLayer }));
const UnfoldedPaper = lazy(async () => ({ default: (await import("./UnfoldedPaper.tsx")).UnfoldedPaper }));
const SectionSlip = lazy(async () => ({ default: (await import("./SectionSlip.tsx")).SectionSlip }));

/** Details and sections are of what is chosen or asked for: the first drawing does without. */
const useLookedCloser = laterPart(() => import("./looked-closer.ts"));

export interface PaperSheetProps {
  title: string;
  eye: Eye;
  hand: PointingHand;
  /** What is drawn. */
  scheme: Scheme;
  /** What the views are laid out by: stays put while something is dragged. */
  laidBy: Scheme;
  assessment: Assessment | null;
  waiting?: boolean;
  proposed?: Scheme | undefined;
  ghost?: Scheme | undefined;
  /** Others at this sheet: what they have chosen, where they point. */
  others?: OtherHands | undefined;
  /** Inked on the views, such as forces. */
  layer?: ViewLayer | undefined;
  drawingRemark?: string | undefined;
  answeredMarkIds: ReadonlySet<string>;
  revisionLetters: readonly string[];
  heading: string;
  remark?: string | undefined;
  notes: readonly UnplacedNote[];
  chosenNoteId: string | null;
  onNote: (note: PlacedNote) => void;
  slip?: ReactNode;
  after?: ReactNode;
  /** The foot of the margin, told the scale of the elevation for the key. */
  footer?: (pxPerM: number) => ReactNode;
  /** False where something else is laid in the place of the isometric. */
  isometric?: boolean;
  /** True where it is shown at which places the fittings of a chosen unit would land. */
  aligns?: boolean;
  spine: ReactNode;
  tray?: ReactNode;
  titleBlock: ReactNode;
  /** Laid on the field: the stamp, a slip on keys. */
  onField?: ReactNode;
}

/** The one unit chosen, where one may move it. */
function aligningOf({ hand, laidBy, aligns = false }: PaperSheetProps) {
  const [unitId, ...others] = hand.chosenIds;
  const isUnit = laidBy.containers.some(({ id }) => id === unitId);
  return aligns && unitId !== undefined && others.length === 0 && isUnit ? { unitId, stood: laidBy } : undefined;
}

/** A sheet with the three views of one scheme and numbered notes tied to it by leaders. */
export function PaperSheet(props: PaperSheetProps) {
  const { eye, hand, scheme, laidBy } = props;
  const { field, onField } = useField();
  const chosenIds = useMemo(() => new Set(hand.chosenIds), [hand.chosenIds]);
  const [slots, setSlots] = useState<readonly NoteSlot[]>([]);
  const { picture, section } = eye;
  const laid = useMemo(
    () => (field === null ? null : layViews(field, laidBy, eye.side, eye.storey, { picture, section })),
    [field, laidBy, eye.side, eye.storey, picture, section],
  );
  const looking = useLenses(laid, eye.side);
  const { views } = looking;
  const closer = useLookedCloser();
  const rested = useRested(scheme, hand.held !== null && !isLifted(hand.held));
  const details = useMemo(
    () => (hand.chosenId === null || closer === null ? [] : closer.detailsOf(rested, hand.chosenId)),
    [closer, rested, hand.chosenId],
  );
  const covered = showsDetails({ details, detailed: eye.detailed });
  const notes = useNotesOnViews({ ...props, scheme: rested }, field, laid, views, covered);
  const numbers = useMemo(() => noteNumbers(notes), [notes]);
  const anchors = useMemo(() => leaderAnchors(notes), [notes]);
  const overlay = useRef<SVGGElement>(null);
  const lettered = useLettered(overlay, notes);
  const chosen = notes.find(({ id }) => id === props.chosenNoteId);
  const show = (id: string) => {
    const at = views === null || isPlain(looking.lenses.elevation) ? null : elementPlace(scheme, id);
    if (views !== null && at !== null) looking.bring(toScreen(views.elevation.transform, project(eye.side, at)));
  };
  const chooseNote = (note: PlacedNote) => {
    props.onNote(note);
    show(note.elementId);
  };
  const focus = (id: string) => {
    hand.focused(id);
    if (document.activeElement?.matches(":focus-visible") === true) show(id);
  };
  const step = (by: 1 | -1) => {
    const at = chosen === undefined ? (by === 1 ? -1 : 0) : chosen.number - 1;
    const next = notes.at((at + by + notes.length) % Math.max(1, notes.length));
    if (next !== undefined) chooseNote(next);
  };
  const unfold = () => eye.unfold(eye.unfoldedId === null ? unitOf(scheme, hand.chosenId) : null);
  const firstSection = () => closer?.firstLine(scheme, "x", eye.storey) ?? null;
  useKeys({
    n: () => step(1),
    "Shift+n": () => step(-1),
    v: () => eye.turn(1),
    "Shift+v": () => eye.turn(-1),
    u: unfold,
    d: () => eye.showDetails(!eye.detailed),
    x: () => {
      if (props.isometric ?? true) eye.cutAlong(section === null ? firstSection() : null);
    },
    o: () => eye.stepPicture(1, 0),
    "Shift+o": () => eye.stepPicture(-1, 0),
    i: () => eye.stepPicture(0, 1),
    "Shift+i": () => eye.stepPicture(0, -1),
    ...lensKeys(looking),
  });
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
            <AlsoChosen value={chosenIds}>
              {eye.unfoldedId === null ? null : (
                <Suspense fallback={null}>
                  <UnfoldedPaper
                    field={place}
                    scheme={scheme}
                    unitId={eye.unfoldedId}
                    assessment={props.assessment}
                    chosenId={hand.chosenId}
                    noteNumbers={numbers}
                    answeredMarkIds={props.answeredMarkIds}
                    inHand={hand.tool !== null}
                    onPress={(picked, point) => hand.pressAt(picked, point, props.assessment)}
                    onMove={hand.moveTo}
                    onDrop={hand.drop}
                    onFocusElement={hand.focused}
                    onFold={() => eye.unfold(null)}
                  />
                </Suspense>
              )}
              {eye.unfoldedId !== null ? null : (
                <SchemePaper
                  field={place}
                  views={views}
                  looking={looking}
                  picture={eye.picture}
                  onPicture={eye.dragPicture}
                  onPictureHome={eye.pictureAsIsometric}
                  section={section}
                  onSection={eye.cutAlong}
                  firstSection={firstSection}
                  details={details}
                  onDetails={eye.showDetails}
                  detailed={eye.detailed}
                  scheme={scheme}
                  rested={rested}
                  lift={hand.lift}
                  assessment={props.assessment}
                  side={eye.side}
                  storey={eye.storey}
                  chosenId={hand.chosenId}
                  noteNumbers={numbers}
                  answeredMarkIds={props.answeredMarkIds}
                  revisionLetters={props.revisionLetters}
                  proposed={props.proposed}
                  ghost={props.ghost}
                  waiting={props.waiting ?? false}
                  layer={props.layer}
                  remark={props.drawingRemark}
                  isometric={props.isometric ?? true}
                  inHand={hand.tool !== null || hand.held?.kind === "beam"}
                  aligning={aligningOf(props)}
                  others={props.others}
                  band={hand.held?.kind === "band" ? hand.held : null}
                  onPress={(picked, point) => hand.pressAt(picked, point, props.assessment)}
                  onMove={hand.moveTo}
                  onDrop={hand.drop}
                  onFocusElement={focus}
                  onSide={eye.turnTo}
                  onCancel={() => hand.hold(null)}
                />
              )}
            </AlsoChosen>
          )}
          {props.onField}
        </FieldTeller>
      )}
      margin={
        <NotesMargin
          heading={props.heading}
          remark={props.remark}
          notes={notes}
          chosenNumber={chosen?.number ?? null}
          onChoose={(number) => {
            const note = notes.find((each) => each.number === number);
            if (note !== undefined) chooseNote(note);
          }}
          slip={
            <>
              {section === null ? null : (
                <Suspense fallback={null}>
                  <SectionSlip scheme={scheme} storey={eye.storey} line={section} onLine={eye.cutAlong} />
                </Suspense>
              )}
              {props.slip}
            </>
          }
          after={props.after}
          footer={views === null ? undefined : props.footer?.(views.elevation.transform.pxPerM)}
          onSlots={setSlots}
        />
      }
      overlay={
        <g ref={overlay}>
          {anchors.length === 0 ? null : (
            <Suspense fallback={null}>
              <LeaderLayer anchors={anchors} slots={slots} chosenNumber={chosen?.number ?? null} lettered={lettered} />
            </Suspense>
          )}
        </g>
      }
    />
  );
}

/** Notes numbered by the views as laid, so that looking closer renumbers none; their leaders end where they are seen. */
function useNotesOnViews(
  { notes, scheme, eye, isometric = true }: PaperSheetProps,
  field: Field | null,
  laid: LaidViews | null,
  views: LaidViews | null,
  /** True where details stand in the place of the picture. */
  covered: boolean,
): readonly PlacedNote[] {
  const { side, storey, unfoldedId, picture, section } = eye;
  const on = useMemo(
    () =>
      field === null || laid === null || unfoldedId !== null
        ? null
        : { scheme, side, storey, views: laid, field, isometric: isometric && section === null && !covered, picture },
    [field, laid, unfoldedId, scheme, side, storey, isometric, picture, section, covered],
  );
  const placed = useMemo(() => placeNotes(notes, on), [notes, on]);
  return useMemo(
    () => (on === null || views === null || views === laid ? placed : seenNotes(placed, notes, { ...on, views })),
    [placed, notes, on, views, laid],
  );
}

/** The unit that is chosen, or in which the chosen opening is cut; null for anything else. */
const unitOf = (scheme: Scheme, id: string | null): string | null =>
  scheme.containers.find((unit) => unit.id === id)?.id ??
  scheme.openings.find((opening) => opening.id === id)?.containerId ??
  null;
