import type { Actor } from "@cornerway/schema";
import { done, refuse, type Outcome } from "../../outcome.ts";
import { append } from "../../record/append.ts";
import type { Connection } from "../../store/connection.ts";
import type { Database } from "../../store/database.ts";
import { closeLinksOf } from "../../store/link-rows.ts";
import { deleteMembership } from "../../store/membership-rows.ts";
import { findReaders } from "../../store/reader-link-rows.ts";
import { deleteSessionsOf } from "../../store/session-rows.ts";
import { actOf } from "../act-of.ts";
import { actorOf, type Part } from "../part.ts";

/** Withdraws a reader's link: whoever reads by it is out at once. */
export const endReaderLink = (database: Database, sender: Part, readerId: string): Promise<Outcome<null>> =>
  actOf(database, sender, "invite", async (tx, part) =>
    (await endReading(tx, part.projectId, readerId, actorOf(part, "invite"))) ? done(null) : refuse("not-found"),
  );

/** Ends what someone reads by a link, with their sessions; false where there is no such reader. */
export async function endReading(tx: Connection, projectId: string, readerId: string, by: Actor): Promise<boolean> {
  const [reader] = await findReaders(tx, projectId, { id: readerId });
  if (reader === undefined) return false;
  const { id: personId, name } = reader;
  await closeLinksOf(tx, personId);
  await deleteMembership(tx, projectId, personId, "reader");
  await deleteSessionsOf(tx, personId);
  await append(tx, projectId, by, () => ({ kind: "reader link ended", personId, name }));
  return true;
}
