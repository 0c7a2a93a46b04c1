import type { Assessment, CostBook, Operation, Premium, Scheme } from "@cornerway/schema";
import type { GoverningVectors, LiveStrength } from "../strength/live-strength.ts";
import type { SharedWork } from "../strength/shared-work.ts";
import type { Strength } from "../strength/strength-from.ts";

/** What a search is done with: pure functions of the scheme, handed in so that the search has one memory and one judge. */
export type RemedyTools = {
  /** The scheme with these operations drawn; undefined where it would not take them. */
  readonly draw: (scheme: Scheme, operations: readonly Operation[]) => Scheme | undefined;
  readonly assess: (scheme: Scheme) => Assessment;
  /** Strength whole, of the scheme as it is: kept for its next mark. */
  readonly judgeAsIs: (scheme: Scheme) => SharedWork<Strength>;
  readonly judge: (scheme: Scheme) => SharedWork<Strength>;
  /** Strength under these vectors and gravity: quick, and never more than the whole run says. */
  readonly look: (scheme: Scheme, governed: GoverningVectors) => LiveStrength;
  /** How many helpers there are. */
  readonly helping: number;
  readonly premium: (scheme: Scheme, book: CostBook) => Premium;
  readonly book: CostBook;
};
