import type { Assessment, Scheme } from "@cornerway/schema";
import type { ReactNode } from "react";
import type { ViewLayer } from "../drawing/contract.ts";
import type { OtherHands } from "../drawing/others/other-hands.ts";
import type { PointingHand } from "../hand/use-looking-hand.ts";
import type { PlacedNote, UnplacedNote } from "../notes/placed-note.ts";
import type { Eye } from "./use-eye.ts";

/** What a sheet with the three views of one scheme is drawn from, and what stands around them. */
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
