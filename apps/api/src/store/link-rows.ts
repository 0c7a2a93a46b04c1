import { Actor, type Invitation, type LinkKind, Role } from "@cornerway/schema";
import type { OneTimeLink as Row } from "../generated/prisma/client.ts";
import type { Connection } from "./connection.ts";

interface Common {
  id: string;
  expiresAt: Date;
}

/** A one-time link as it is kept, without its secret. */
export type Link = Common &
  (
    | {
        kind: "invitation";
        email: string;
        projectId: string;
        role: Role;
        partEndsAt: Date | null;
        madeBy: Actor;
        madeAt: Date;
      }
    | { kind: "reader-link"; personId: string; projectId: string; madeBy: Actor; madeAt: Date }
    | { kind: "new-password"; personId: string }
    | { kind: "first-administrator" }
  );

export interface NewLink {
  id: string;
  kind: LinkKind;
  secretHash: string;
  expiresAt: Date;
  email?: string;
  personId?: string;
  projectId?: string;
  role?: Role;
  partEndsAt?: Date | null;
  madeBy?: Actor;
}

export async function insertLink(tx: Connection, link: NewLink): Promise<void> {
  await tx.oneTimeLink.create({ data: link });
}

/** Gives a link that is good still a new ticket, in place of any it had; null when it is not good. */
export async function takeTicket(
  db: Connection,
  secretHash: string,
  ticket: { ticketHash: string; ticketExpiresAt: Date },
): Promise<Link | null> {
  const good = { secretHash, closedAt: null, expiresAt: { gt: new Date() } };
  const [row] = await db.oneTimeLink.updateManyAndReturn({ where: good, data: ticket });
  return row === undefined ? null : linkOf(row);
}

/** The link a ticket belongs to; null when ticket or link is not good any more. */
export async function findByTicket(db: Connection, ticketHash: string): Promise<Link | null> {
  const now = new Date();
  const row = await db.oneTimeLink.findFirst({
    where: { ticketHash, ticketExpiresAt: { gt: now }, closedAt: null, expiresAt: { gt: now } },
  });
  return row === null ? null : linkOf(row);
}

/** Closes a link for ever; false when it was closed already. */
export async function closeLink(tx: Connection, id: string): Promise<boolean> {
  return (await tx.oneTimeLink.updateMany({ where: { id, closedAt: null }, data: closed() })).count > 0;
}

export async function closeLinksOf(tx: Connection, personId: string): Promise<void> {
  await tx.oneTimeLink.updateMany({ where: { personId, closedAt: null }, data: closed() });
}

/** Closes every invitation into a project that someone made, or that was made for their address; says which. */
export async function closeInvitationsOf(
  tx: Connection,
  projectId: string,
  { id, email }: { id: string; email: string },
): Promise<{ email: string; role: Role }[]> {
  const rows = await tx.$queryRaw<{ email: string; role: string }[]>`
    update "one_time_link" set "closed_at" = now(), "ticket_hash" = null
    where "project_id" = ${projectId}::uuid and "kind" = 'invitation' and "closed_at" is null and ("made_by" ->> 'id' = ${id} or "email" = ${email})
    returning "email", "role"`;
  return rows.map((row) => ({ email: row.email, role: Role.parse(row.role) }));
}

/** Invitations into a project that can still be taken up, the newest first. */
export async function readInvitations(db: Connection, projectId: string): Promise<Invitation[]> {
  const rows = await db.oneTimeLink.findMany({
    where: { projectId, kind: "invitation", closedAt: null, expiresAt: { gt: new Date() } },
    orderBy: { madeAt: "desc" },
  });
  return rows.map((row) => invitationOf(row));
}

/** Of several processes that see to the link of the first administrator, one does at a time. */
export async function lockFirstLinks(tx: Connection): Promise<void> {
  await tx.$executeRaw`select pg_advisory_xact_lock(hashtext('cornerway first administrator'))`;
}

/** True when a link for the first administrator was made since then and is good still. */
export async function firstLinkSince(db: Connection, since: Date): Promise<boolean> {
  const where = { kind: "first-administrator", closedAt: null, madeAt: { gt: since } };
  return (await db.oneTimeLink.count({ where })) > 0;
}

export async function closeFirstLinks(tx: Connection): Promise<void> {
  await tx.oneTimeLink.updateMany({ where: { kind: "first-administrator", closedAt: null }, data: closed() });
}

const closed = () => ({ closedAt: new Date(), ticketHash: null });

function invitationOf(row: Row): Invitation {
  const link = linkOf(row);
  if (link.kind !== "invitation") throw new Error(`${link.id} is no invitation`);
  const { id, email, role, madeBy, madeAt, expiresAt, partEndsAt } = link;
  return {
    ...{ id, email, role, invitedBy: madeBy.name, madeAt: madeAt.toISOString(), expiresAt: expiresAt.toISOString() },
    partEndsAt: partEndsAt?.toISOString() ?? null,
  };
}

function linkOf(row: Row): Link {
  const { id, kind, expiresAt, email, personId, projectId, partEndsAt, madeAt } = row;
  if (kind === "first-administrator") return { id, kind, expiresAt };
  if (kind === "new-password" && personId !== null) return { id, kind, expiresAt, personId };
  if (kind === "reader-link" && personId !== null && projectId !== null)
    return { id, kind, expiresAt, personId, projectId, madeBy: Actor.parse(row.madeBy), madeAt };
  if (kind !== "invitation" || email === null || projectId === null) throw new Error(`the link ${id} is not whole`);
  const made = { madeBy: Actor.parse(row.madeBy), madeAt, role: Role.parse(row.role) };
  return { id, kind, expiresAt, email, projectId, partEndsAt, ...made };
}
