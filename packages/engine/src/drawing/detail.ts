import type { PaperRect } from "./corrugation.ts";

/** What a part of a detail is made of, for its ink: steel that is added, the container's own, concrete. */
export type DetailPart = PaperRect & {
  readonly what: "added steel" | "container steel" | "plate" | "anchor" | "concrete";
  /** The section, the member or the pad it is; what a note beside it says. */
  readonly name: string;
};

/** A cut through one place where steel meets a container, mm about the place itself: u across, z up. */
export type Detail = {
  readonly subject: "head of post" | "foot of post" | "pad" | "seat" | "head of opening" | "sill of opening";
  readonly tag: string;
  readonly parts: readonly DetailPart[];
  /** Fillet welds, each at its root. */
  readonly welds: readonly { readonly uMm: number; readonly zMm: number; readonly legMm: number }[];
  /** Lengths that matter, upright ones at a place across. */
  readonly heights: readonly { readonly fromMm: number; readonly toMm: number; readonly atMm: number }[];
};
