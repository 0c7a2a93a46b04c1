import { z } from "zod";
import { PersonName } from "./account.ts";
import { ProjectId } from "./ids.ts";
import { Moment } from "./review.ts";
import { Role } from "./roles.ts";
import { SentPassword } from "./sent-password.ts";
import { Session } from "./session.ts";

/** Addresses of the pages that links lead to; the secret follows after `#`, where no server sees it. A reader's works until it ends. */
export const linkPages = {
  invitation: "/invitation",
  "reader-link": "/reader",
  "first-administrator": "/first",
  "new-password": "/new-password",
} as const;
export type LinkKind = keyof typeof linkPages;

/** 32 random bytes in base64url, RFC 4648 section 5. */
export const LinkSecret = z.string().regex(/^[\w-]{43}$/, "the part of the address after #");

export const OpenLink = z.strictObject({ secret: LinkSecret }).meta({ id: "OpenLink" });
export type OpenLink = z.infer<typeof OpenLink>;

/** What an opened link is for, told only to whoever opened it. */
export const OpenedLink = z
  .discriminatedUnion("kind", [
    z.strictObject({
      kind: z.literal("invitation"),
      email: z.string(),
      projectName: z.string(),
      role: Role,
      invitedBy: z.string(),
      /** `signed-in` when this browser is signed in with that address already. */
      account: z.enum(["none", "known", "signed-in"]),
    }),
    z.strictObject({
      kind: z.literal("reader-link"),
      projectName: z.string(),
      /** For whom it was made, and by whom. */
      name: z.string(),
      madeBy: z.string(),
      expiresAt: Moment,
      /** Whoever is signed in in this browser as someone else, and will not be any more. */
      signedInAs: z.string().nullable(),
    }),
    z.strictObject({ kind: z.literal("first-administrator") }),
    z.strictObject({ kind: z.literal("new-password"), email: z.string(), name: z.string() }),
  ])
  .meta({ id: "OpenedLink" });
export type OpenedLink = z.infer<typeof OpenedLink>;

/** How an opened link is used; which of these it takes is said by its kind and by `account`. */
export const UseLink = z
  .discriminatedUnion("as", [
    z.strictObject({ as: z.literal("new person"), name: PersonName, password: SentPassword }),
    z.strictObject({ as: z.literal("known person"), password: SentPassword }),
    z.strictObject({ as: z.literal("signed in") }),
    z.strictObject({ as: z.literal("reader") }),
    z.strictObject({
      as: z.literal("first administrator"),
      name: PersonName,
      email: z.email().max(254),
      password: SentPassword,
    }),
    z.strictObject({ as: z.literal("new password"), password: SentPassword }),
  ])
  .meta({ id: "UseLink" });
export type UseLink = z.infer<typeof UseLink>;

/** Whoever used a link is signed in; `projectId` is the project they joined. */
export const LinkUsed = z.strictObject({ session: Session, projectId: ProjectId.nullable() }).meta({ id: "LinkUsed" });
export type LinkUsed = z.infer<typeof LinkUsed>;
