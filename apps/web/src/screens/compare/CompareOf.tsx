import type { Pair, Revision, Scheme } from "@cornerway/schema";
import { useMemo, useRef, useState } from "react";
import { choiceKeys } from "../../hand/step-choice.ts";
import { wholeWords } from "../../notes/notes-from-marks.ts";
import { FieldTeller } from "../../paper/FieldTeller.tsx";
import { layViews } from "../../paper/lay-views.ts";
import { levelMarks } from "../../paper/level-marks.ts";
import { useEye } from "../../paper/use-eye.ts";
import { useField } from "../../paper/use-field.ts";
import { useLettered } from "../../paper/use-lettered.ts";
import { KeysSlip } from "../../room/KeysSlip.tsx";
import { RoomSpine } from "../../room/RoomSpine.tsx";
import { RoomTitleBlock } from "../../room/RoomTitleBlock.tsx";
import { useRoom } from "../../room/room-context.ts";
import { useLookingPresence } from "../../room/use-looking-presence.ts";
import { useSheetKeys } from "../../room/use-sheet-keys.ts";
import { ink } from "../../look/ink.ts";
import { LeaderLayer } from "../../sheet/LeaderLayer.tsx";
import { LevelStrip } from "../../sheet/LevelStrip.tsx";
import { SheetFrame } from "../../sheet/SheetFrame.tsx";
import type { NoteSlot } from "../../sheet/contract.ts";
import { compareKeyLines, useBHeld } from "./compare-keys.ts";
import { CompareField } from "./CompareField.tsx";
import { CompareMargin } from "./CompareMargin.tsx";
import { useClouds, type NumberedLine } from "./use-clouds.ts";
import { useChosenLine } from "./use-chosen-line.ts";
import { useCompared } from "./use-compared.ts";
import "./compare.css";

export interface CompareOfProps {
  revisions: Pair<Revision>;
  /** All revisions, oldest first. */
  letters: readonly string[];
  onPair: (one: string, other: string) => void;
}

/** Two revisions over each other: clouds and deltas on the drawing, what changed in words in the margin. */
export function CompareOf({ revisions, letters: all, onPair }: CompareOfProps) {
  const { project } = useRoom();
  const { before, after } = revisions;
  const letters = { before: before.letter, after: after.letter };
  const schemes = useMemo(() => ({ before: before.scheme, after: after.scheme }), [before.scheme, after.scheme]);
  const laidBy = useMemo(() => both(schemes), [schemes]);
  const compared = useCompared(revisions);
  const eye = useEye(after.scheme);
  const { field, onField } = useField();
  const views = useMemo(
    () => (field === null ? null : layViews(field, laidBy, eye.side, eye.storey)),
    [field, laidBy, eye.side, eye.storey],
  );
  const { numbered, marks } = useClouds({
    ...{
      changes: compared.comparison.elements,
      site: compared.comparison.site,
      lines: compared.lines,
      schemes,
      revisionLetters: all,
      views,
      field,
    },
    ...{ side: eye.side, storey: eye.storey },
  });
  const [share, setShare] = useState(1);
  const seenShare = useBHeld() ? 0 : share;
  const [chosenId, choose] = useState<string | null>(null);
  const [asTable, showTable] = useState(false);
  const [keysShown, showKeys] = useState(false);
  const [slots, setSlots] = useState<readonly NoteSlot[]>([]);
  const overlay = useRef<SVGGElement>(null);
  const { lettered } = useLettered(overlay, marks);
  useLookingPresence(4, chosenId);

  const lines = useChosenLine({ numbered, eye, schemes, changes: compared.comparison.elements });
  const letGo = () => {
    choose(null);
    lines.letGo();
  };
  useSheetKeys({
    ...choiceKeys(after.scheme, chosenId, choose),
    PageUp: eye.up,
    PageDown: eye.down,
    n: () => lines.step(1),
    "Shift+n": () => lines.step(-1),
    v: () => eye.turn(1),
    "Shift+v": () => eye.turn(-1),
    l: () => showTable(!asTable),
    Escape: () => (keysShown ? showKeys(false) : asTable ? showTable(false) : letGo()),
    "?": () => showKeys(!keysShown),
  });

  return (
    <SheetFrame
      title={`Sheet 4, Compare, ${project.name}, revisions ${letters.before} and ${letters.after}`}
      spine={<RoomSpine draftMoves={0} currentLetter={letters.after} />}
      levels={
        views === null ? null : (
          <LevelStrip levels={levelMarks(after.scheme, views)} chosenStorey={eye.storey} onChoose={eye.cutAt} />
        )
      }
      field={(place) => (
        <FieldTeller field={place} onField={onField}>
          <CompareField
            {...{
              place,
              views,
              revisions,
              schemes,
              letters,
              eye,
              compared,
              numbered,
              marks,
              share,
              seenShare,
              asTable,
            }}
            {...{ chosenId, chosenNumber: lines.number, revisionLetters: all, onShare: setShare, onChoose: choose }}
            onDrawing={() => showTable(false)}
          />
          {keysShown ? <KeysSlip lines={compareKeyLines} onClose={() => showKeys(false)} /> : null}
        </FieldTeller>
      )}
      margin={
        <CompareMargin
          {...{ letters, all, compared, numbered, onPair }}
          chosenNumber={lines.number}
          onChoose={lines.show}
          onTable={() => showTable(!asTable)}
          onKeys={() => showKeys(true)}
          onSlots={setSlots}
        />
      }
      overlay={
        <g ref={overlay}>
          {asTable || seenShare === 0 ? null : (
            <ChangeLeaders {...{ numbered, slots, lettered }} chosenNumber={lines.number} />
          )}
        </g>
      }
      titleBlock={
        <RoomTitleBlock
          sheet={4}
          scale="as noted"
          revision={letters.after}
          verdict={after.verdict}
          verdictLine={wholeWords(after.verdict)}
          remark={`${letters.after}, as sent`}
        />
      }
    />
  );
}

interface ChangeLeadersProps {
  numbered: readonly NumberedLine[];
  slots: readonly NoteSlot[];
  lettered: ReturnType<typeof useLettered>["lettered"];
  chosenNumber: number | null;
}

/** From the words in the margin to the clouds, which bear the numbers themselves. */
const ChangeLeaders = ({ numbered, ...leaders }: ChangeLeadersProps) => (
  <LeaderLayer
    {...leaders}
    anchors={numbered.flatMap(({ anchor, number }) =>
      anchor === null ? [] : [{ ...anchor, number, colour: ink.ochre }],
    )}
    numbered={false}
  />
);

/** Both schemes' units, so that the views have room for the one and the other. */
const both = ({ before, after }: Pair<Scheme>): Scheme => ({
  ...after,
  containers: [...after.containers, ...before.containers],
});
