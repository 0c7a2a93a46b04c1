import type { Mark, Operation, RemedyChange, Scheme } from "@cornerway/schema";
import type { Analysis } from "../load-path/analysis.ts";

/** What a search for remedies stands on: the scheme as it is, what geometry and statics say of it, and the mark to settle. */
export type RemedyGround = {
  readonly scheme: Scheme;
  readonly analysis: Analysis;
  readonly mark: Mark;
};

/** One change that may settle the mark, with what else it turned out to need. */
export type Trial = {
  readonly change: RemedyChange;
  readonly operations: readonly Operation[];
  /** Changes that make it good: larger pads, heavier posts, posts beneath bearings. In `operations` with the rest. */
  readonly also?: readonly RemedyChange[];
};

/** Changes of one kind, from the least to the most: the first that works is offered, and the one before it is shown to fail. */
export type Ladder = readonly Trial[];

/** Changes of one kind that may settle a mark; no ladder where the kind has nothing to do there. */
export type Generator = (ground: RemedyGround) => readonly Ladder[];
