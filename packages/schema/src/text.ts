import { z } from "zod";

/**
 * What people write, at most `max` UTF-16 units. Normalised to NFC on the way in, so that two spellings of one text
 * have one digest; lone surrogates are refused because RFC 8785 cannot serialise them, NUL because databases cannot keep it.
 */
export const personText = (max: number) =>
  z
    .string()
    .min(1)
    .max(max)
    .refine((text) => text.isWellFormed(), "holds half of a character (a lone surrogate); type it again")
    .refine((text) => !text.includes("\0"), "holds a NUL character; type it again")
    .transform((text) => text.normalize("NFC"));

/** The same on one line: a name, a place, a number. Not blank, no control characters. */
export const personLine = (max: number) =>
  personText(max)
    .refine((text) => text.trim() !== "", "is blank")
    .refine((text) => !/\p{Cc}/u.test(text), "holds a control character, such as a line break");

/** A short label on a drawing such as G1, D3 or P2. */
export const Tag = z
  .string()
  .regex(/^[A-Z]{1,3}[0-9]{1,4}$/, "one to three capitals and a number, such as F1 or D12")
  .meta({ id: "Tag" });
