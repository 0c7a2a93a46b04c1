import type { BorderUnknown } from "./border-unknowns.ts";

/** Further unknowns that go so far, each in its own unit, and the pressures, N, to which those they cause are added. */
export interface PressureSum {
  readonly pressures: Float64Array;
  readonly unknowns: readonly BorderUnknown[];
  readonly sizes: Float64Array;
}

/** What a factorised state does when further unknowns go so far and nothing else acts. */
export interface Responses {
  readonly addMovement: (sum: Float64Array, unknowns: readonly BorderUnknown[], sizes: Float64Array) => void;
  /**
   * Pressure under each bearing, those taken as closed that are closed in the factorised state. Returns the movement behind
   * each sum where it was met on the way, else null; each sum has the bits it would have by itself.
   */
  readonly addPressures: (sums: readonly PressureSum[]) => (Float64Array | null)[];
  /** Whether several sums together cost less than one after the other. */
  readonly sideBySide: boolean;
}
