import { KeptResponses } from "./kept-responses.ts";
import type { Prepared } from "./prepared.ts";
import type { Responses } from "./responses.ts";
import { SweptResponses } from "./swept-responses.ts";

/**
 * In a small building states and load vectors share few unknowns, so the response to each is kept; in a large one every load
 * vector has unknowns of its own. By the size of the building alone, so that a load vector has the same bits by itself.
 */
export function responsesOf(from: Prepared): Responses {
  const numbers = from.factor.panels.reduce((sum, panel) => sum + panel.length, 0);
  return numbers > LARGE ? new SweptResponses(from) : new KeptResponses(from);
}

/** Numbers in a factor from which one sweep through it for each load vector costs less (measured). */
const LARGE = 120_000;
