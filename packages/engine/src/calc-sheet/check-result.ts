import type { CheckResult } from "@cornerway/schema";
import type { ElementResult } from "../strength/element-result.ts";
import { rounded } from "../units.ts";

/** What governs one part, as a row of the calculations: without its working, numbers as they are printed. */
export function checkResult(result: ElementResult): CheckResult {
  const { id, ownerId, element, place, limitState, utilisation, refused, ifProved, upperBound, wouldDo } = result;
  const { governingRun, assumptions, held, envelope, ifHeldDown, covered, working } = result;
  return {
    ...{ id, ownerId, part: element, place, check: limitState },
    utilisation: utilisation === undefined ? null : rounded(utilisation),
    ...(refused !== undefined && { refused }),
    ...(ifProved !== undefined && { ifProved: rounded(ifProved) }),
    ...(upperBound !== undefined && { upperBound: rounded(upperBound) }),
    ...(wouldDo && { wouldDo }),
    ...{ run: governingRun, assumptions, held: [...held] },
    envelope: Object.entries(envelope).map(([set, use]) => ({ assumptions: set, utilisation: roundedOrNull(use) })),
    ...(ifHeldDown !== undefined && { ifHeldDown: roundedOrNull(ifHeldDown) }),
    coverage: covered,
    ...(working && { clause: working.clause, certainty: working.certainty }),
  };
}

const roundedOrNull = (use: number | null): number | null => (use === null ? null : rounded(use));
