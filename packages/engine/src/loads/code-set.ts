import type { Certainty } from "@cornerway/schema";
import type { CodeEdition } from "./site-hazards.ts";

/** The standards that go with one adopted building code: closed, never mixed. */
export type CodeSet = {
  readonly building: CodeEdition;
  readonly loads: string;
  readonly steel: string;
  readonly coldFormed: string;
  readonly certainty: Certainty;
};
