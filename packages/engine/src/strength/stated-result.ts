import type { Check } from "../checks/check.ts";
import { coverageOf } from "../checks/coverage.ts";
import type { AssumptionId } from "./assumption-sets.ts";
import type { ElementResult } from "./element-result.ts";

export type Stated = {
  readonly ownerId: string;
  readonly place: string;
  readonly run: string;
  readonly assumptions?: AssumptionId;
};

/**
 * A check that no run of the model decides: by statics, or of the building as a whole. `run` says under what; `proved` is the
 * same check at 343 MPa where its steel has no record.
 */
export function statedResult(
  { ownerId, place, run, assumptions = "locks at play" }: Stated,
  check: Check,
  proved?: Check,
): ElementResult {
  const { element, limitState } = check;
  const { coverage, why } = coverageOf(limitState, element);
  return {
    id: `${ownerId} ${element} ${place}`,
    ownerId,
    element,
    place,
    limitState,
    ...(check.ok
      ? { utilisation: check.utilisation, certainty: check.working.certainty, working: check.working }
      : { refused: check.why }),
    ...(proved?.ok === true && { ifProved: proved.utilisation }),
    governingRun: run,
    assumptions,
    held: [],
    envelope: {},
    covered: coverage,
    ...(why !== undefined && { coveredWhy: why }),
  };
}
