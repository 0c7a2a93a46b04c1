import type { CheckBasis } from "../checks/check-basis.ts";
import type { DesignBasis } from "../loads/design-basis.ts";
import type { LoadingInputs } from "../loads/loading-inputs.ts";
import type { SiteHazards } from "../loads/site-hazards.ts";
import type { SoilClass } from "../loads/soil-class.ts";

/** What a place and a project say beyond the scheme. */
export type StrengthRequest = {
  readonly hazards: SiteHazards;
  readonly inputs: LoadingInputs;
  /** Assumed until a report is attached. */
  readonly soil: SoilClass;
  /** Concrete of the pads, MPa. */
  readonly concreteMpa: number;
};

/** The codes in force, at both levels. */
export type StrengthBasis = {
  readonly loads: DesignBasis;
  /** Strength design, for everything made of steel or concrete. */
  readonly factored: CheckBasis;
  /** Allowable stress, for the ground. */
  readonly allowable: CheckBasis;
};
