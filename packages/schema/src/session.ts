import { z } from "zod";
import { Digest, PersonId } from "./ids.ts";

export const SignIn = z
  .strictObject({ email: z.email().max(254), password: z.string().min(1).max(200) })
  .meta({ id: "SignIn" });
export type SignIn = z.infer<typeof SignIn>;

/** Who is signed in, and the token every write must carry in the `csrf-token` header. */
export const Session = z
  .strictObject({
    person: z.strictObject({
      ...{ id: PersonId, name: z.string(), email: z.string(), administrator: z.boolean() },
      /** There for whoever reads by a link, and then true: they have no account. */
      byLink: z.literal(true).optional(),
    }),
    csrfToken: z.string(),
  })
  .meta({ id: "Session" });
export type Session = z.infer<typeof Session>;

/** The answer to a draft act: its number in server order and the digest of the draft after it. */
export const DraftActDone = z
  .strictObject({ draftNumber: z.int().min(1), contentDigest: Digest, entry: z.int().min(1) })
  .meta({ id: "DraftActDone" });
export type DraftActDone = z.infer<typeof DraftActDone>;
