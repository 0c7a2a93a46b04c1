import { z } from "zod";
import { PersonId } from "./ids.ts";
import { Licence } from "./people.ts";
import { Disposition, Moment, StampWords } from "./review.ts";
import { SentPassword } from "./sent-password.ts";
import { personLine } from "./text.ts";

export const PersonName = personLine(120);

/** The words of an engineer's office for the dispositions it words in its own way. */
export const StampWording = z.partialRecord(Disposition, StampWords).meta({ id: "StampWording" });
export type StampWording = z.infer<typeof StampWording>;

export const Account = z
  .strictObject({
    person: z.strictObject({ id: PersonId, name: z.string(), email: z.string() }),
    /** Administrators of the service start projects and ask people in. */
    administrator: z.boolean(),
    licence: Licence.nullable(),
    stampWording: StampWording,
  })
  .meta({ id: "Account" });
export type Account = z.infer<typeof Account>;

export const NameChange = z.strictObject({ name: PersonName }).meta({ id: "NameChange" });
export type NameChange = z.infer<typeof NameChange>;

export const LicenceChange = z.strictObject({ licence: Licence.nullable() }).meta({ id: "LicenceChange" });
export type LicenceChange = z.infer<typeof LicenceChange>;

export const StampWordingChange = z.strictObject({ stampWording: StampWording }).meta({ id: "StampWordingChange" });
export type StampWordingChange = z.infer<typeof StampWordingChange>;

export const PasswordChange = z
  .strictObject({ present: SentPassword, next: SentPassword })
  .meta({ id: "PasswordChange" });
export type PasswordChange = z.infer<typeof PasswordChange>;

export const ResetAsked = z.strictObject({ email: z.email().max(254) }).meta({ id: "ResetAsked" });
export type ResetAsked = z.infer<typeof ResetAsked>;

/** One sign-in of a person, by an id that opens nothing. */
export const SignedInPlace = z
  .strictObject({
    id: z.uuid(),
    /** Browser and system by family, as the browser names itself. */
    agent: z.string(),
    /** The first part of the network address. */
    network: z.string(),
    since: Moment,
    seenAt: Moment,
    endsAt: Moment,
    /** True for the one that asks. */
    present: z.boolean(),
  })
  .meta({ id: "SignedInPlace" });
export type SignedInPlace = z.infer<typeof SignedInPlace>;
