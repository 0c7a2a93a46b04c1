import { passwordFault } from "@cornerway/schema";
import type { z } from "zod";

/** A password chosen on this page, held to the same rule as in the service. `about` gives what is known of the person. */
export const chosenPassword = <Words extends { password: string }>(
  words: z.ZodType<Words, Words>,
  about: (words: Words) => readonly string[],
) =>
  words.superRefine((given, context) => {
    const fault = passwordFault(given.password, about(given));
    if (fault !== null) context.addIssue({ code: "custom", path: ["password"], message: fault });
  });

/** Said beside every field for a new password. */
export const passwordRule = "12 characters or more. A few words of your own make a good one.";
