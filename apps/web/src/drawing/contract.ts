import type { EyePlace, PictureEye, SectionModel, Side } from "@cornerway/engine";
import type { PointerEvent, ReactNode } from "react";
import type { Assessment, Container, Face, PointMm, Scheme, UnitSystem } from "@cornerway/schema";
import type { HeldEdges } from "../tools/resize-opening.ts";
import type { BoxPx, Label } from "./label/place-labels.ts";
import type { ScreenPoint, ViewTransform } from "./view-transform.ts";

export type { Side } from "@cornerway/engine";

export const elementKinds = ["container", "opening", "post", "pad", "beam", "seat", "tie", "lock", "load"] as const;
export type ElementKind = (typeof elementKinds)[number];

/**
 * What lies under the pointer and where on it, in the site frame (mm). In elevation the missing depth is that of the
 * face picked; in plan the height is the cut's storey floor.
 */
export type PickedElement = {
  id: string;
  kind: ElementKind;
  face?: Face | undefined;
  at: PointMm;
  /** The edges of an opening whose handle was taken. */
  edges?: HeldEdges | undefined;
};

export type ElementPointerHandler = (picked: PickedElement, event: PointerEvent<SVGGElement>) => void;

/** The view a layer inks on; a plan with the height it is cut at, a picture unit by unit, since nearer ones hide it. */
export type LayerView =
  | { view: "elevation"; side: Side }
  | { view: "plan"; cutMm: number }
  | { view: "section"; model: SectionModel }
  | { view: "picture"; unit: Container; eye: PictureEye; toPx: (at: PointMm) => ScreenPoint };

/** Where a layer inks: the view it lies on, how that stands on the field, and what is drawn there. */
export type LayerPlace = LayerView & { transform: ViewTransform; scheme: Scheme };

export type LayerLabel = Label & { colour: string; fontWeight: number };

/** Something inked on a view over its members and under its lettering, such as forces; it never takes the pointer. */
export type ViewLayer = {
  ink: (place: LayerPlace) => ReactNode;
  /** Where it inks, px of the field: lettering keeps off. */
  covers: (place: LayerPlace) => readonly BoxPx[];
  /** Its own figures, placed after all other lettering. */
  figures: (place: LayerPlace, units: UnitSystem) => readonly LayerLabel[];
};

/** What the three views share. Views hold no state: what is chosen or proposed comes in from outside. */
export type ViewProps = {
  scheme: Scheme;
  /** Null while not checked: hatches, strokes and figures are removed, not greyed. */
  assessment: Assessment | null;
  transform: ViewTransform;
  selectedId?: string | null | undefined;
  /** The number a mark bears in the margin, by mark id; read out with the element it concerns. */
  noteNumbers?: ReadonlyMap<string, number> | undefined;
  /** Marks an engineer has answered on this very content: inked. All others are screening, drawn at pencil weight. */
  answeredMarkIds?: ReadonlySet<string> | undefined;
  /** True where only lines are wanted: no load path, no hatches. Verdicts are still read out. */
  linesOnly?: boolean | undefined;
  /** The scheme with an open request taken in: what it adds is drawn dashed, inside the engineer's cloud. */
  proposed?: Scheme | undefined;
  /** The scheme as it was: drawn under the present one, dashed in pencil. */
  ghost?: Scheme | undefined;
  /** True while an answer is awaited for more than 0.1 s: the path drops to pencil. */
  waiting?: boolean | undefined;
  layer?: ViewLayer | undefined;
  /** Looked into more closely: the top left of what is seen, px of the field; the grid's circles keep to it. */
  seenFrom?: { leftPx: number; topPx: number } | undefined;
  onElementPointerDown?: ElementPointerHandler | undefined;
  /** Letters of the revisions in use; grid rows are lettered after them. */
  revisionLetters?: readonly string[] | undefined;
  /** Elements are tree items; Tab enters at the chosen one and arrow keys belong to the screen. */
  onElementFocus?: ((id: string) => void) | undefined;
};

export type ElevationViewProps = ViewProps & {
  side: Side;
  /** The storey whose openings are dimensioned; of the lowest that has any unless given. */
  storey?: number | undefined;
  /** Px from the origin of the field to the two ends of the level lines, so that they join the level strip. */
  levelLinesFromPx?: number | undefined;
  levelLinesToPx?: number | undefined;
  /** Grid bubbles and dimension strings; left out on the desk and on the owner's page. */
  bare?: boolean | undefined;
  /** Scale figures and trees in pencil. */
  figures?: boolean | undefined;
};

export type PlanViewProps = ViewProps & {
  storey: number;
  /** Heights its strings and circles keep to, px: under them its title begins; as far as they like unless given. */
  stringsWithin?: { topPx: number; footPx: number } | undefined;
};

/** `eye` is where one looks from; the south-east and above unless given. */
export type IsometricViewProps = ViewProps & { eye?: EyePlace | undefined };
