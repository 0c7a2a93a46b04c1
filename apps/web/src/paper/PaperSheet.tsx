import type { Assessment, Scheme } from "@cornerway/schema";
import { useMemo, useRef, useState } from "react";
import type { ReactNode } from "react";
import type { ViewLayer } from "../drawing/contract.ts";
import { AlsoChosen } from "../drawing/also-chosen.ts";
import type { PointingHand } from "../hand/use-looking-hand.ts";
import { leaderAnchors, noteNumbers, placeNotes } from "../notes/placed-note.ts";
import type { PlacedNote, UnplacedNote } from "../notes/placed-note.ts";
import { useKeys } from "../keys/use-keys.ts";
import { LeaderLayer } from "../sheet/LeaderLayer.tsx";
import { LevelStrip } from "../sheet/LevelStrip.tsx";
import { NotesMargin } from "../sheet/NotesMargin.tsx";
import { SheetFrame } from "../sheet/SheetFrame.tsx";
import type { NoteSlot } from "../sheet/contract.ts";
import { FieldTeller } from "./FieldTeller.tsx";
import { layViews } from "./lay-views.ts";
import { levelMarks } from "./level-marks.ts";
import { SchemePaper } from "./SchemePaper.tsx";
import { UnfoldedPaper } from "./UnfoldedPaper.tsx";
import { useLettered } from "./use-lettered.ts";
import { useField } from "./use-field.ts";
import type { Eye } from "./use-eye.ts";

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
  /** Inked on elevation and plan, such as forces. */
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
  const views = useMemo(
    () => (field === null ? null : layViews(field, laidBy, eye.side, eye.storey)),
    [field, laidBy, eye.side, eye.storey],
  );
  const notes = useMemo(
    () =>
      placeNotes(
        props.notes,
        field === null || views === null || eye.unfoldedId !== null
          ? null
          : { scheme, side: eye.side, storey: eye.storey, views, field, isometric: props.isometric ?? true },
      ),
    [props.notes, scheme, eye.side, eye.storey, eye.unfoldedId, views, field, props.isometric],
  );
  const numbers = useMemo(() => noteNumbers(notes), [notes]);
  const overlay = useRef<SVGGElement>(null);
  const lettered = useLettered(overlay, notes);
  const chosen = notes.find(({ id }) => id === props.chosenNoteId);
  const step = (by: 1 | -1) => {
    const at = chosen === undefined ? (by === 1 ? -1 : 0) : chosen.number - 1;
    const next = notes.at((at + by + notes.length) % Math.max(1, notes.length));
    if (next !== undefined) props.onNote(next);
  };
  const unfold = () => eye.unfold(eye.unfoldedId === null ? unitOf(scheme, hand.chosenId) : null);
  useKeys({
    n: () => step(1),
    "Shift+n": () => step(-1),
    v: () => eye.turn(1),
    "Shift+v": () => eye.turn(-1),
    u: unfold,
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
              )}
              {eye.unfoldedId !== null ? null : (
                <SchemePaper
                  field={place}
                  views={views}
                  scheme={scheme}
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
                  band={hand.held?.kind === "band" ? hand.held : null}
                  onPress={(picked, point) => hand.pressAt(picked, point, props.assessment)}
                  onMove={hand.moveTo}
                  onDrop={hand.drop}
                  onFocusElement={hand.focused}
                  onSide={eye.turnTo}
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
            if (note !== undefined) props.onNote(note);
          }}
          slip={props.slip}
          footer={views === null ? undefined : props.footer?.(views.elevation.transform.pxPerM)}
          onSlots={setSlots}
        />
      }
      overlay={
        <g ref={overlay}>
          <LeaderLayer
            anchors={leaderAnchors(notes)}
            slots={slots}
            chosenNumber={chosen?.number ?? null}
            lettered={lettered}
          />
        </g>
      }
    />
  );
}

/** The unit that is chosen, or in which the chosen opening is cut; null for anything else. */
const unitOf = (scheme: Scheme, id: string | null): string | null =>
  scheme.containers.find((unit) => unit.id === id)?.id ??
  scheme.openings.find((opening) => opening.id === id)?.containerId ??
  null;
