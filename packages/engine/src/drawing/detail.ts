import type { PaperRect } from "./corrugation.ts";

/** What a part of a detail is made of, for its ink: steel that is added, the container's own, concrete, a device of its maker's shape. */
export type DetailPart = PaperRect & {
  readonly what: "added steel" | "container steel" | "plate" | "anchor" | "concrete" | "device";
  /** The section, the member or the pad it is; what a note beside it says. */
  readonly name: string;
  /** Where it is no rectangle: its outline within its bounds. */
  readonly outline?: readonly { readonly uMm: number; readonly zMm: number }[];
};

/** A fillet weld at its root: its leg; all round or along an edge, on the far side too, of a length each where it is stated. */
export type DetailWeld = {
  readonly uMm: number;
  readonly zMm: number;
  readonly legMm: number;
  readonly around: boolean;
  readonly bothSides?: true;
  readonly lengthMm?: number;
};

/** A cut through one place where steel meets a container, mm about the place itself: u across, z up (in a jamb u along the wall, z out of it). */
export type Detail = {
  readonly subject:
    | "head of post"
    | "foot of post"
    | "pad"
    | "seat"
    | "stiffener at seat"
    | "head of opening"
    | "jamb of opening"
    | "sill of opening"
    | "lock"
    | "made connection"
    | "hold-down"
    | "tie";
  readonly tag: string;
  readonly parts: readonly DetailPart[];
  readonly welds: readonly DetailWeld[];
  /** Lengths that matter, upright ones at a place across. */
  readonly heights: readonly { readonly fromMm: number; readonly toMm: number; readonly atMm: number }[];
};
