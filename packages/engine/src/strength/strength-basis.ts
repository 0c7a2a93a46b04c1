import type { CheckBasis } from "../checks/check-basis.ts";
import type { DesignBasis } from "../loads/design-basis.ts";

/** The codes in force, at both levels. */
export type StrengthBasis = {
  readonly loads: DesignBasis;
  /** Strength design, for everything made of steel or concrete. */
  readonly factored: CheckBasis;
  /** Allowable stress, for the ground. */
  readonly allowable: CheckBasis;
};
