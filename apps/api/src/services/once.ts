import type { z } from "zod";
import { done, refuse, type Outcome } from "../outcome.ts";
import type { Connection } from "../store/connection.ts";
import { insertAnswerKept, takeKey, type Repeatable } from "../store/repeatable-rows.ts";

/**
 * Does work once under an Idempotency-Key, in the work's own transaction: the same request sent again gets the first
 * answer, another one under the same key is refused, and what was refused may be sent again. `kept` is what is stored of
 * the answer: secrets that are shown once stay out of it.
 */
export async function once<T>(
  tx: Connection,
  repeatable: Repeatable | null,
  { shape, kept = (answer) => answer }: { shape: z.ZodType<T>; kept?: (answer: T) => T },
  work: () => Promise<Outcome<T>>,
): Promise<Outcome<T>> {
  if (repeatable === null) return work();
  const earlier = await takeKey(tx, repeatable);
  if (earlier !== undefined)
    return earlier.bodyDigest === repeatable.bodyDigest ? done(shape.parse(earlier.answer)) : refuse("key-reused");
  const outcome = await work();
  if (outcome.ok) await insertAnswerKept(tx, repeatable, kept(outcome.value));
  return outcome;
}
