import {
  memberAmplification,
  storeyAmplification,
  type BowedMember,
  type LeaningStorey,
} from "../codes/steel/amplification.ts";
import type { SteelBasis } from "../codes/steel/steel-basis.ts";
import { checkOf, type Check } from "./check.ts";
import type { CheckedElement } from "./limit-state.ts";

/** How far a pressed member enlarges its own bow: over 1 beyond what factors may stand for, so that the engineer judges it. */
export const bowCheck = (element: CheckedElement, bowed: BowedMember, basis: SteelBasis): Check =>
  checkOf({ element, limitState: "amplification" }, memberAmplification(bowed, basis));

/** How far a storey leans under what stands on it. */
export const leanCheck = (storey: LeaningStorey, basis: SteelBasis): Check =>
  checkOf({ element: "building", limitState: "amplification" }, storeyAmplification(storey, basis));
