import type { Working } from "./working.ts";

/** Why a strength cannot be stated: the caller's mark becomes `needs the engineer`, with this reason. */
export type Refusal =
  | "shape not covered by this check"
  | "web too slender for the clause implemented"
  | "wall too slender for the clause implemented"
  | "proportions outside the clause's limits"
  | "weld smaller than the least size"
  | "effective section vanishes"
  | "part bears beyond its edge"
  | "nothing resists it";

/** A strength with its working, or the reason there is none. `nominal` and `available` are in the working's unit. */
export type Resistance =
  | { readonly ok: true; readonly nominal: number; readonly available: number; readonly working: Working }
  | { readonly ok: false; readonly why: Refusal };

export const refused = (why: Refusal): Resistance => ({ ok: false, why });
