import { StampWording, type Licence } from "@cornerway/schema";
import type { Connection } from "./connection.ts";
import { licenceOf } from "./membership-rows.ts";

export interface Person {
  id: string;
  name: string;
  email: string;
}

/** Someone who can sign in. */
export interface Account extends Person {
  passwordHash: string;
  administrator: boolean;
  byLink: boolean;
}

const named = { id: true, name: true, email: true } as const;
const ofAccount = { ...named, passwordHash: true, administrator: true, byLink: true } as const;

/** Someone by the address they sign in with, in any case, with the hash of their password; nobody who reads by a link. */
export const findPerson = (db: Connection, email: string): Promise<Account | null> =>
  db.person.findUnique({ where: { email: email.toLowerCase(), byLink: false }, select: ofAccount });

export const findPersonById = (db: Connection, id: string): Promise<Account | null> =>
  db.person.findUnique({ where: { id }, select: ofAccount });

/** Writes a person down; false when somebody has that address already. */
export async function insertPerson(tx: Connection, person: Person & { passwordHash: string }): Promise<boolean> {
  const { id, name, email, passwordHash } = person;
  // Only these columns: the service's role may set no others, and so makes nobody an administrator.
  const count = await tx.$executeRaw`
    insert into "person" ("id", "name", "email", "password_hash")
    values (${id}::uuid, ${name}, ${email.toLowerCase()}, ${passwordHash}) on conflict ("email") do nothing`;
  return count > 0;
}

/** Writes down someone who will read by a link: no password is theirs, and no address. */
export async function insertLinkReader(tx: Connection, { id, name }: Pick<Person, "id" | "name">): Promise<void> {
  await tx.$executeRaw`
    insert into "person" ("id", "name", "email", "password_hash", "by_link")
    values (${id}::uuid, ${name}, ${`${id}@reader.invalid`}, '', true)`;
}

/** Makes someone the administrator of the service; false when there is anyone besides them. */
export async function becomeFirstAdministrator(tx: Connection, id: string): Promise<boolean> {
  const rows = await tx.$queryRaw<{ done: boolean }[]>`select "become_first_administrator"(${id}::uuid) as "done"`;
  return rows[0]?.done ?? false;
}

export const countPeople = (db: Connection): Promise<number> => db.person.count();

export async function updateName(db: Connection, id: string, name: string): Promise<void> {
  await db.person.updateMany({ where: { id }, data: { name } });
}

export async function updatePasswordHash(tx: Connection, id: string, passwordHash: string): Promise<void> {
  await tx.person.updateMany({ where: { id }, data: { passwordHash } });
}

export async function updateLicence(db: Connection, id: string, licence: Licence | null): Promise<void> {
  const data = { licenceNumber: licence?.number ?? null, licenceJurisdiction: licence?.jurisdiction ?? null };
  await db.person.updateMany({ where: { id }, data });
}

export async function updateStampWording(db: Connection, id: string, stampWording: StampWording): Promise<void> {
  await db.person.updateMany({ where: { id }, data: { stampWording } });
}

/** How someone's office words the dispositions; empty where it uses them as they are. */
export async function readStampWording(db: Connection, id: string): Promise<StampWording> {
  const row = await db.person.findUnique({ where: { id }, select: { stampWording: true } });
  return StampWording.parse(row?.stampWording ?? {});
}

/** An engineer's licence as they state it; null where they have stated none. */
export async function readLicence(db: Connection, id: string): Promise<Licence | null> {
  const row = await db.person.findUnique({
    where: { id },
    select: { licenceNumber: true, licenceJurisdiction: true },
  });
  return row === null ? null : licenceOf(row);
}
