import { Assessment, Digest } from "@cornerway/schema";
import { z } from "zod";

/** What an assessing thread says: how many steps are done, then the answer. */
export const FromThread = z.discriminatedUnion("kind", [
  z.strictObject({ kind: z.literal("step"), done: z.int().min(0) }),
  z.strictObject({ kind: z.literal("answer"), assessment: Assessment, resultDigest: Digest }),
]);
