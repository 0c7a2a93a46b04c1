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
      const gone = await deleteExpired(tx, projectId, personId);
      if (gone === null) return done(null);
      const { name } = gone;
      await append(tx, projectId, serviceActor, () =>
        gone.byLink
          ? { kind: "reader link ended", personId, name }
          : { kind: "role expired", personId, personName: name, role: "reader" },
      );
      return done(null);
    });
}
