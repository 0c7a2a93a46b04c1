import type { Figures } from "./figures.ts";

/** Who reads: the same fact is told to each in their own words. */
export const readers = ["architect", "engineer", "owner"] as const;
export type Reader = (typeof readers)[number];

/** What a mark says to one reader: what is so and why in at most two sentences, and perhaps one grey line. */
export type Told = { readonly body: string; readonly detail?: string };

/** What a mark says, for each reader. `name` gives the tag of the nth element of the mark. */
export type Telling = Readonly<Record<Reader, Told>>;

/** The elements of a mark by their tags, in its own order, and how numbers are written. */
export type Named = {
  readonly at: (index: number) => string;
  readonly rest: (from: number) => string[];
  readonly say: Figures;
  /** A run or a place, with tags in the stead of ids. */
  readonly tagged: (text: string) => string;
};
