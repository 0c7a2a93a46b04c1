import type { Scheme } from "@cornerway/schema";
import type { PadSize } from "../../strength/element-result.ts";
import type { HoldNeeded } from "../../strength/holds-needed.ts";
import type { UsedPart } from "../known-parts.ts";
import type { Trial } from "../trial.ts";

/** What a trial still lacks: parts that are beyond their strength because of it, and what nothing drawn holds. */
export type Lacking = {
  /** The scheme as it is, and with the trial drawn. */
  readonly scheme: Scheme;
  readonly tried: Scheme;
  readonly parts: readonly UsedPart[];
  /** Those among them that leave the mark as it is: the change does not settle it. */
  readonly unsettled: readonly UsedPart[];
  readonly holds: readonly HoldNeeded[];
  /** The pad that would do in the place of one that is too small, by id, where the full run names it. */
  readonly wouldDo: ReadonlyMap<string, PadSize>;
};

/** The trial with more in it, where this repair has something to do. */
export type Repair = (trial: Trial, lacking: Lacking) => Trial | undefined;
