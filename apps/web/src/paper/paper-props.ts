import type { Detail, EyePlace, SectionLine } from "@cornerway/engine";
import type { Assessment, PointMm, Scheme } from "@cornerway/schema";
import type { PickedElement, Side, ViewLayer } from "../drawing/contract.ts";
import type { OtherHands } from "../drawing/others/other-hands.ts";
import type { Projection } from "../drawing/view-transform.ts";
import type { Lift } from "../hand/lift.ts";
import type { Point } from "../hand/use-hand.ts";
import type { LaidViews } from "./lay-views.ts";
import type { Field } from "./use-field.ts";
import type { LookedAt } from "./use-lenses.ts";

/** What the paper with its three views is drawn from, and whom it tells what is done on it. */
export interface SchemePaperProps {
  field: Field;
  views: LaidViews;
  looking: LookedAt;
  /** Where the picture of the whole is seen from. */
  picture: EyePlace;
  /** Turns that picture by the hand, px right and down. */
  onPicture: (rightPx: number, downPx: number) => void;
  onPictureHome: () => void;
  /** The line of the section drawn in the place of that picture. */
  section: SectionLine | null;
  onSection: (line: SectionLine | null) => void;
  /** The line one begins with. */
  firstSection: () => SectionLine | null;
  /** The details of what is chosen, and whether they stand in that place. */
  details: readonly Detail[];
  detailed: boolean;
  onDetails: (shown: boolean) => void;
  scheme: Scheme;
  /** The same when the hand last rested: what is slow to draw is drawn of it. */
  rested: Scheme;
  /** What is lifted off the paper, and where it is while the hand moves. */
  lift: Lift;
  assessment: Assessment | null;
  side: Side;
  storey: number;
  chosenId: string | null;
  noteNumbers: ReadonlyMap<string, number>;
  answeredMarkIds: ReadonlySet<string>;
  revisionLetters: readonly string[];
  proposed?: Scheme | undefined;
  ghost?: Scheme | undefined;
  waiting?: boolean;
  /** Inked on elevation and plan. */
  layer?: ViewLayer | undefined;
  /** Said after the name of the elevation: "proposed", "not checked". */
  remark?: string | undefined;
  isometric: boolean;
  /** True while a tool is in hand: the paper takes the keys itself. */
  inHand: boolean;
  /** The one chosen unit, and the scheme it stood in before it was taken up: where its fittings would land is shown. */
  aligning?: { unitId: string; stood: Scheme } | undefined;
  /** The band being drawn round what is to be chosen. */
  band?: { projection: Projection; from: PointMm; to: PointMm } | null;
  /** Others at this sheet: what they have chosen, where they point. */
  others?: OtherHands | undefined;
  onPress: (picked: PickedElement | null, point: Point) => void;
  onMove: (point: Point) => void;
  onDrop: () => void;
  onFocusElement: (id: string) => void;
  onSide: (side: Side) => void;
  /** Lets go of what is held: the fingers took the drawing itself. */
  onCancel: () => void;
}
