import { lazy, Suspense, useMemo } from "react";
import { AlsoChosen } from "../drawing/also-chosen.ts";
import type { PickedElement } from "../drawing/contract.ts";
import type { Point } from "../hand/carried.ts";
import type { LaidViews } from "./lay-views.ts";
import type { PaperSheetProps } from "./paper-sheet-props.ts";
import { SchemePaper } from "./SchemePaper.tsx";
import type { Field } from "./use-field.ts";
import type { SeenPaper } from "./use-seen-paper.ts";

const UnfoldedPaper = lazy(async () => ({ default: (await import("./UnfoldedPaper.tsx")).UnfoldedPaper }));

interface PaperFieldProps {
  sheet: PaperSheetProps;
  field: Field;
  views: LaidViews;
  seen: SeenPaper;
  noteNumbers: ReadonlyMap<string, number>;
  onFocusElement: (id: string) => void;
}

/** The paper itself: the three views, or one container unfolded. */
export function PaperField({ sheet, field, views, seen, noteNumbers, onFocusElement }: PaperFieldProps) {
  const { eye, hand, scheme, assessment, answeredMarkIds } = sheet;
  const chosenIds = useMemo(() => new Set(hand.chosenIds), [hand.chosenIds]);
  const shared = {
    ...{ field, scheme, assessment, noteNumbers, answeredMarkIds, chosenId: hand.chosenId },
    onPress: (picked: PickedElement | null, point: Point) => hand.pressAt(picked, point, assessment),
    onMove: hand.moveTo,
    onDrop: hand.drop,
  };
  return (
    <AlsoChosen value={chosenIds}>
      {eye.unfoldedId === null ? (
        <SchemePaper
          {...shared}
          {...ofEye(sheet)}
          {...ofSheet(sheet)}
          views={views}
          looking={seen.looking}
          firstSection={seen.firstSection}
          details={seen.details}
          rested={seen.rested}
          onFocusElement={onFocusElement}
        />
      ) : (
        <Suspense fallback={null}>
          <UnfoldedPaper
            {...shared}
            unitId={eye.unfoldedId}
            inHand={hand.tool !== null}
            onFocusElement={hand.focused}
            onFold={() => eye.unfold(null)}
          />
        </Suspense>
      )}
    </AlsoChosen>
  );
}

/** What is looked at, and how one looks elsewhere. */
const ofEye = ({ eye }: PaperSheetProps) => ({
  side: eye.side,
  storey: eye.storey,
  picture: eye.picture,
  section: eye.section,
  detailed: eye.detailed,
  onSide: eye.turnTo,
  onPicture: eye.dragPicture,
  onPictureHome: eye.pictureAsIsometric,
  onSection: eye.cutAlong,
  onDetails: eye.showDetails,
});

/** What the sheet has drawn besides the scheme, and what is in hand. */
const ofSheet = (sheet: PaperSheetProps) => ({
  revisionLetters: sheet.revisionLetters,
  proposed: sheet.proposed,
  ghost: sheet.ghost,
  waiting: sheet.waiting ?? false,
  layer: sheet.layer,
  remark: sheet.drawingRemark,
  isometric: sheet.isometric ?? true,
  others: sheet.others,
  aligning: aligningOf(sheet),
  lift: sheet.hand.lift,
  inHand: sheet.hand.tool !== null || sheet.hand.held?.kind === "beam",
  band: sheet.hand.held?.kind === "band" ? sheet.hand.held : null,
  onCancel: () => sheet.hand.hold(null),
});

/** The one unit chosen, where one may move it. */
function aligningOf({ hand, laidBy, aligns = false }: PaperSheetProps) {
  const [unitId, ...others] = hand.chosenIds;
  const isUnit = laidBy.containers.some(({ id }) => id === unitId);
  return aligns && unitId !== undefined && others.length === 0 && isUnit ? { unitId, stood: laidBy } : undefined;
}
