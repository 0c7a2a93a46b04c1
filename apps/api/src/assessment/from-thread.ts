import { Assessment, Digest } from "@cornerway/schema";
import { z } from "zod";

/** What stands behind an answer, as text: the thread has read it, nobody here does again. */
const ProofText = z.strictObject({
  report: z.string(),
  workings: z.array(z.strictObject({ id: z.string(), working: z.string() })),
});

/** What an assessing thread says: how many steps are done, then the answer. */
export const FromThread = z.discriminatedUnion("kind", [
  z.strictObject({ kind: z.literal("step"), done: z.int().min(0) }),
  z.strictObject({
    kind: z.literal("answer"),
    assessment: Assessment,
    resultDigest: Digest,
    proof: ProofText.nullable(),
  }),
]);
