import { randomUUID } from "node:crypto";
import { linkPages, longestReadingDays, type Invitation, type NewInvitation } from "@cornerway/schema";
import { done, refuse, refuseField, type Outcome } from "../outcome.ts";
import { append } from "../record/append.ts";
import type { Connection } from "../store/connection.ts";
import type { Database } from "../store/database.ts";
import { closeLink, insertLink, readInvitations } from "../store/link-rows.ts";
import { countHolders } from "../store/membership-rows.ts";
import { findPerson } from "../store/person-rows.ts";
import { countTry } from "../store/rate-windows.ts";
import { actOf } from "./act-of.ts";
import { exclude, refuseRole } from "./exclusion.ts";
import { actorOf, type Part } from "./part.ts";
import { newSecret, secretHash } from "./secret.ts";

const dayMs = 86_400_000;
const invitationLastsMs = 7 * dayMs;
const mostPerHour = 60;

export interface Invited {
  invitation: Invitation;
  /** Page and secret: told to whoever asks in and to whoever is asked in, and kept nowhere. */
  path: string;
}

/** Asks someone into a project. A second invitation of one address in one role takes the place of the first. */
export async function invite(database: Database, sender: Part, body: NewInvitation): Promise<Outcome<Invited>> {
  const { projectId, person } = sender;
  const email = body.email.toLowerCase();
  if ((await countTry(database.connection, `invitations of ${person.id}`, 3_600_000)) > mostPerHour)
    return refuse("too-many-tries", { detail: `no more than ${mostPerHour} invitations an hour` });
  const secret = newSecret();
  return actOf(database, sender, "invite", async (tx, part) => {
    const refused = refuseEnd(body.partEndsAt) ?? (await refusalOf(tx, part, { ...body, email }));
    if (refused !== undefined) return refused;
    await withdrawEarlier(tx, part, { email, role: body.role });
    const madeBy = actorOf(part, "invite");
    const { at } = await append(tx, projectId, madeBy, () => ({ kind: "person invited", email, role: body.role }));
    const expiresAt = new Date(Date.parse(at) + invitationLastsMs);
    const id = randomUUID();
    const partEndsAt = body.partEndsAt === null ? null : new Date(body.partEndsAt);
    const row = { id, kind: "invitation" as const, secretHash: secretHash(secret), email, projectId, role: body.role };
    await insertLink(tx, { ...row, partEndsAt, madeBy, expiresAt });
    const told = { id, email, role: body.role, invitedBy: madeBy.name, madeAt: at, expiresAt: expiresAt.toISOString() };
    return done({
      invitation: { ...told, partEndsAt: partEndsAt?.toISOString() ?? null },
      path: `${linkPages.invitation}#${secret}`,
    });
  });
}

/** Takes an invitation back; one that is used, withdrawn or over is not there any more. */
export function withdrawInvitation(database: Database, sender: Part, id: string): Promise<Outcome<null>> {
  const { projectId } = sender;
  return actOf(database, sender, "invite", async (tx, part) => {
    const found = (await readInvitations(tx, projectId)).find((one) => one.id === id);
    if (found === undefined) return refuse("not-found");
    await withdraw(tx, part, found);
    return done(null);
  });
}

async function withdraw(tx: Connection, part: Part, { id, email, role }: Invitation): Promise<void> {
  await closeLink(tx, id);
  const by = actorOf(part, "invite");
  await append(tx, part.projectId, by, () => ({ kind: "invitation withdrawn", email, role }));
}

async function withdrawEarlier(tx: Connection, part: Part, { email, role }: Pick<Invitation, "email" | "role">) {
  const open = await readInvitations(tx, part.projectId);
  for (const one of open) if (one.email === email && one.role === role) await withdraw(tx, part, one);
}

async function refusalOf(
  tx: Connection,
  part: Part,
  { email, role }: Pick<Invitation, "email" | "role">,
): Promise<Outcome<never> | undefined> {
  const { projectId } = part;
  // Whoever confirms the engineer is not chosen by the one the engineer judges, once there is an owner to choose.
  const byArchitect = actorOf(part, "invite").role === "architect" && !part.roles.includes("owner");
  if (role === "owner" && byArchitect && (await countHolders(tx, projectId, "owner")) > 0)
    return refuse("role-refused", { detail: "an owner asks other owners in" });
  const person = await findPerson(tx, email);
  const held = person === null ? undefined : await refuseRole(tx, projectId, person.id, role);
  if (held !== undefined) return held;
  const open = (await readInvitations(tx, projectId)).find((one) => one.email === email && exclude(one.role, role));
  return open && refuse("roles-exclude", { detail: `that address is asked in as ${open.role}` });
}

export function refuseEnd(endsAt: string | null, pointer = "/partEndsAt"): Outcome<never> | undefined {
  if (endsAt === null) return undefined;
  const leftMs = Date.parse(endsAt) - Date.now();
  if (leftMs > 0 && leftMs <= longestReadingDays * dayMs) return undefined;
  return refuseField("body-invalid", pointer, `a day to come, no more than ${longestReadingDays} days away`);
}
