import type { ActionCase } from "../loads/action-case.ts";
import type { DesignRun } from "../loads/design-runs.ts";
import type { CombinationLevel } from "../loads/load-combination.ts";

export type StrengthRun = DesignRun & {
  readonly level: CombinationLevel;
  /** At allowable level with level loads, the run of its gravity loads by themselves. */
  readonly gravityAlone?: string;
  /** The units and posts it is held against; absent: all. */
  readonly owners?: ReadonlySet<string>;
};

/** Every action case once, and every vector to solve with them. */
export type RunPlan = { readonly cases: readonly ActionCase[]; readonly runs: readonly StrengthRun[] };
