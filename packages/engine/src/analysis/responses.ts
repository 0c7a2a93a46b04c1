import type { BorderUnknown } from "./border-unknowns.ts";

/** What a factorised state does when further unknowns go so far (the unknown's own unit) and nothing else acts. */
export interface Responses {
  readonly addMovement: (sum: Float64Array, unknowns: readonly BorderUnknown[], sizes: Float64Array) => void;
  /** Pressure under each bearing, N, those taken as closed that are closed in the factorised state. */
  readonly addPressures: (sum: Float64Array, unknowns: readonly BorderUnknown[], sizes: Float64Array) => void;
}
