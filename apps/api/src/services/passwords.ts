import { randomBytes } from "node:crypto";
import { passwordFault } from "@cornerway/schema";
import { hash, verify } from "@node-rs/argon2";
import { refuseField, type Outcome } from "../outcome.ts";
import { isCommonPassword } from "./common-passwords.ts";
import { Turnstile } from "./turnstile.ts";

/**
 * A hash takes 19 MiB and some ten milliseconds of one core: two at a time leave the rest of the process its cores, and
 * a crowd that would wait for longer than about two seconds is told to come back.
 */
const hashing = new Turnstile({ atOnce: 2, mostWaiting: 64 });

/** Argon2id, 19 MiB, 2 passes, 1 lane: the first choice of the OWASP password storage cheat sheet (from memory). */
export const hashPassword = (password: string): Promise<string> =>
  hashing.pass(() => hash(password.normalize("NFC"), { memoryCost: 19_456, timeCost: 2, parallelism: 1 }));

/** Verified for an unknown address, so that the time of the answer does not say whether an address is known. */
const nobodysHash = hashPassword(randomBytes(32).toString("hex"));

/** True when the password is the one of that hash; false, after as long, where there is no hash. */
export async function isPassword(passwordHash: string | undefined, password: string): Promise<boolean> {
  const known = passwordHash ?? (await nobodysHash);
  const right = await hashing.pass(() => verify(known, password.normalize("NFC")));
  return right && passwordHash !== undefined;
}

/** The refusal of a password that will not do for someone; undefined when it will. */
export function refusePassword(
  password: string,
  about: { name: string; email: string },
  pointer: string,
): Outcome<never> | undefined {
  const listed = isCommonPassword(password) ? "It is on the list of passwords that are tried first." : null;
  const fault = passwordFault(password, [about.name, about.email]) ?? listed;
  return fault === null ? undefined : refuseField("password-refused", pointer, fault);
}
