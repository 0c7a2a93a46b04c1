import type { Assessment, Scheme } from "@cornerway/schema";

/** A scheme with what the engine says of it, both assessments of one edit in the same scope. */
export interface Drawn {
  readonly scheme: Scheme;
  readonly result: Assessment;
}
