import type { CheckedElement, LimitState } from "../checks/limit-state.ts";
import type { SimplifiedCondition } from "../codes/containers/simplified-path.ts";
import type { Irregularity } from "../loads/irregularity.ts";
import type { ShapeLimitCode } from "../loads/shape-limit.ts";
import type { ModelNote } from "../model/build-model.ts";
import type { Refusal } from "../working/resistance.ts";
import type { HoldNeeded } from "./holds-needed.ts";
import type { LateralGap } from "./lateral/lateral-gaps.ts";
import type { Axis } from "../loads/wind-shape.ts";

/** Why a verdict is what it is; wording is elsewhere. `partId` names an element result. */
export type StrengthReason =
  /** Every set of assumptions says no. */
  | { readonly kind: "over"; readonly partId: string; readonly utilisation: number }
  /** Beyond a safe bound, or between two. */
  | {
      readonly kind: "beyond its bound";
      readonly partId: string;
      readonly utilisation: number;
      readonly upperBound?: number;
    }
  | { readonly kind: "assumption decides"; readonly partId: string; readonly least: string; readonly most: string }
  /** Over 1 only in runs that need bearings to hold what lifts. */
  | { readonly kind: "over if held down"; readonly partId: string; readonly utilisation?: number }
  | { readonly kind: "strength refused"; readonly partId: string; readonly why: Refusal }
  | {
      readonly kind: "not covered";
      readonly partId: string;
      readonly element: CheckedElement;
      readonly limitState: LimitState;
      readonly why: string;
    }
  /** This unit moves in these runs even with its bearings held: nothing can be said of them. */
  | {
      readonly kind: "moves";
      readonly runs: number;
      readonly of: number;
      readonly first: string;
      readonly words: string;
    }
  /** Other units move so: those runs have no forces for this one either. */
  | { readonly kind: "runs without equilibrium"; readonly runs: number; readonly of: number }
  /** Nothing is drawn that could hold this. */
  | { readonly kind: "hold not drawn"; readonly hold: HoldNeeded }
  /** The engineer has left sheet walls out of the lateral system: his own stands in their place, and is not drawn. */
  | { readonly kind: "sheet walls otherwise"; readonly rule: "left out" }
  /** One way no wall of this unit counts. */
  | { readonly kind: "no lateral wall"; readonly gap: LateralGap }
  /** Frames, braces or columns are named as the system of an axis: they are no part of the model. */
  | { readonly kind: "seismic system not drawn"; readonly axis: Axis }
  /** The path for one unit by itself is named, and these of its conditions do not hold. */
  | { readonly kind: "simplified path closed"; readonly axis: Axis; readonly fails: readonly SimplifiedCondition[] }
  /** Irregular in a way that is not permitted. */
  | { readonly kind: "irregular"; readonly irregularity: Irregularity }
  | { readonly kind: "wind outside its limits"; readonly limits: readonly ShapeLimitCode[] }
  | { readonly kind: "seismic system refused"; readonly axis: Axis }
  | { readonly kind: "left out of the model"; readonly note: ModelNote };
