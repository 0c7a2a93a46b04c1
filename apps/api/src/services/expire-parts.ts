import { serviceActor } from "@cornerway/schema";
import { done, type Outcome } from "../outcome.ts";
import { append } from "../record/append.ts";
import type { Database } from "../store/database.ts";
import { deleteExpired, readExpired } from "../store/membership-rows.ts";

/**
 * Takes away the parts whose time is over and writes it down. They were good for nothing from that moment on: this is
 * for the record. Several processes may do it at once; each part goes once.
 */
export async function expireParts(database: Database): Promise<void> {
  for (const { projectId, personId } of await readExpired(database.connection))
    await database.act(projectId, async (tx): Promise<Outcome<null>> => {
      const personName = await deleteExpired(tx, projectId, personId);
      if (personName === null) return done(null);
      const of = { personId, personName, role: "reader" as const };
      await append(tx, projectId, serviceActor, () => ({ kind: "role expired", ...of }));
      return done(null);
    });
}
