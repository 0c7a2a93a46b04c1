import type { ReactNode } from "react";
import type { Disposition, Role, Verdict } from "@cornerway/schema";
import type { ScreenPoint } from "../drawing/view-transform.ts";

/** The seven sheets, in the order of the row at the foot of the title block; the only navigation. */
export const sheets = [
  { number: 1, name: "Scheme" },
  { number: 2, name: "Openings" },
  { number: 3, name: "Review" },
  { number: 4, name: "Compare" },
  { number: 5, name: "Status" },
  { number: 6, name: "Calcs" },
  { number: 7, name: "Record" },
] as const;
export type SheetNumber = (typeof sheets)[number]["number"];

/** A command offered beside what it concerns. `key` is the single key that does it, shown small. */
export type Offer = {
  label: string;
  key?: string | undefined;
  onPress: () => void;
  /** Why it sleeps; drawn dashed and said, still reachable by keyboard. */
  asleepBecause?: string | undefined;
};

/** What a person wrote on a mark; always italic, in the colour of the role. */
export type NoteComment = {
  id: string;
  text: string;
  authorName: string;
  role: Role;
  /** Lettered small: "11 Mar 16:20". */
  at: string;
  settled: boolean;
};

/** One numbered note. Sentences come from the wording of the marks; nothing here knows what they mean. */
export type SheetNote = {
  number: number;
  /** Ids of the marks it speaks for (more than one where notes are folded together). */
  markIds: readonly string[];
  /** Null for a note that only a person wrote. */
  verdict: Verdict | null;
  /** True until an engineer has answered the mark on this very content. */
  screening: boolean;
  heading?: string | undefined;
  /** What several marks told together are about: "Openings in the sheets · 9". */
  matter?: string | undefined;
  body: string;
  /** Sentences of further marks of the same kind, opened on demand. */
  alike?: readonly string[] | undefined;
  greyLine?: string | undefined;
  offer?: Offer | undefined;
  quietOffer?: Offer | undefined;
  comments: readonly NoteComment[];
  /** Where it points; null when the place is on none of the views shown. */
  anchor: LeaderAnchor | null;
  /** A typed twin, an answer field or anything else that belongs under the words. */
  children?: ReactNode;
};

/** The end of a leader, px from the top left of the sheet; a dot on a face, an arrow on an edge. */
export type LeaderAnchor = ScreenPoint & { end: "dot" | "arrow"; upwards?: boolean };

export type NotesMarginProps = {
  /** "Notes, as you draw" */
  heading: string;
  /** "86 points of statics · 8,032 checks on 144 load vectors" */
  remark?: string | undefined;
  notes: readonly SheetNote[];
  /** What is looked for among them, above what scrolls. */
  filters?: ReactNode;
  chosenNumber?: number | null | undefined;
  onChoose?: ((number: number) => void) | undefined;
  /** Laid first in the margin: a change request, an error, a cut-off slip. */
  slip?: ReactNode;
  /** After the notes: what is looked up and asks for no answer. */
  after?: ReactNode;
  /** Drawn at the foot of the margin. */
  footer?: ReactNode;
  /** Told after layout: the px height of each number, from the top of the sheet, for the leaders. */
  onSlots?: ((slots: readonly NoteSlot[]) => void) | undefined;
};

/** Where a leader leaves the margin. */
export type NoteSlot = { number: number; xPx: number; yPx: number };

/** `storey` is null for the roof, which nothing is cut at. */
export type LevelMark = { storey: number | null; name: string; zMm: number; yPx: number };

export type LevelStripProps = {
  levels: readonly LevelMark[];
  chosenStorey: number | null;
  onChoose: (storey: number) => void;
};

export const toolNames = ["stack", "shift", "turn", "cut", "open-wall", "post"] as const;
export type ToolName = (typeof toolNames)[number];

export type TrayProps = {
  inHand: ToolName | null;
  onTake: (tool: ToolName | null) => void;
  /** Why the whole tray sleeps, such as "Only the architect draws". */
  asleepBecause?: string | undefined;
};

/** From the newest to the oldest. */
export type SpineProps = {
  /** Moves not yet sent, drawn as pencil dashes on top. */
  draftMoves: number;
  revisions: readonly { letter: string; date: string; entriesSince: number }[];
  currentLetter: string | null;
  /** Entries of the record before the oldest revision shown. */
  entriesBefore: number;
  entries: number;
  onChoose?: ((letter: string | null) => void) | undefined;
};

export type TitleBlockProps = {
  projectName: string;
  /** "Client · place" */
  subtitle: string;
  sheet: SheetNumber;
  /** "as noted" */
  scale: string;
  date: string;
  revision: string | null;
  verdict: Verdict;
  /** The project's own line, such as "Does not work yet"; the verdict's own words without it. */
  verdictLine?: string | undefined;
  remark?: string | undefined;
  onSheet: (sheet: SheetNumber) => void;
  onProject?: (() => void) | undefined;
  /** Sheets that are not there yet: drawn dashed, with why. */
  asleepSheets?: ReadonlyMap<SheetNumber, string> | undefined;
};

/** `number` ties the slip to a place on the drawing, like a note's. */
export type SlipProps = {
  label: string;
  author?: string | undefined;
  hand?: Role | undefined;
  number?: number | undefined;
  children: ReactNode;
};

export type ReviewStampProps =
  | {
      state: "choosing";
      revision: string;
      /** "Revision C · 14 sheets" */
      subject: string;
      chosen: Disposition | null;
      onChoose: (disposition: Disposition) => void;
      /** The office's own words for a disposition. */
      wording?: Readonly<Partial<Record<Disposition, string>>> | undefined;
      /** What happens next, by disposition. */
      next: Readonly<Record<Disposition, string>>;
      /** Why one cannot be stamped yet. */
      asleepBecause: Readonly<Partial<Record<Disposition, string>>>;
      signer: string;
      text: string;
      onText: (text: string) => void;
      onPress: () => void;
      /** Puts the stamp down without pressing it. */
      onAside?: (() => void) | undefined;
      /** What else it asks for before it is pressed. */
      children?: ReactNode;
    }
  | {
      state: "pressed";
      disposition: Disposition;
      /** The office's own words, where it has them; the disposition is then said below. */
      wording?: string | undefined;
      revision: string;
      date: string;
      signer: string;
      text?: string | undefined;
    };

/** Size of the drawing field and the px of its top left from the sheet's. */
export type FieldPlace = { widthPx: number; heightPx: number; leftPx: number; topPx: number };

export type SheetFrameProps = {
  /** The one heading of the page, hidden from sight: "Sheet 1, Scheme, Ferry Lane". */
  title: string;
  spine?: ReactNode;
  levels?: ReactNode;
  tray?: ReactNode;
  /** Drawn with the size of the field once it is known. */
  field: (field: FieldPlace) => ReactNode;
  margin?: ReactNode;
  titleBlock: ReactNode;
  /** Leaders, laid over everything, in sheet px. */
  overlay?: ReactNode;
};
