import type { Clause } from "../working/working.ts";

/** The redundancy factor with each condition for taking it as 1, shown true or false. */
export type Redundancy = {
  readonly factor: number;
  readonly conditions: readonly { readonly code: RedundancyCondition; readonly holds: boolean }[];
  readonly clause: Clause;
};

export type RedundancyCondition = "category B or C" | "regular in plan" | "two bays on each side of the centre of mass";
