import { steels, type Steel } from "../catalog/materials.ts";
import { governing, type Check } from "./check.ts";

/** A member's checks as its steel is taken, with the governing utilisation were the steel's yield proved 343 MPa. */
export type ProvedPair = {
  readonly checks: readonly Check[];
  readonly governing: Check | undefined;
  /** "if proved": utilisation of the same limit state at 343 MPa; absent where it cannot be stated. */
  readonly ifProved?: number;
};

/** Runs the checks of a member at the yield taken and at 343 MPa. `run` must not depend on anything but the steel. */
export function ifProved(taken: Steel, run: (steel: Steel) => readonly Check[]): ProvedPair {
  const checks = run(taken);
  const worst = governing(checks);
  if (worst === undefined || !worst.ok) return { checks, governing: worst };
  const proved = run(steels.weathering).find(({ limitState }) => limitState === worst.limitState);
  return proved?.ok === true
    ? { checks, governing: worst, ifProved: proved.utilisation }
    : { checks, governing: worst };
}
