import { z } from "zod";
import { printInThread } from "../permit-set/print-in-thread.ts";
import { printTask } from "../queue/add-set.ts";
import type { Task, TaskContext } from "../queue/task.ts";
import { gatherSource } from "../services/permit-sets/gather-source.ts";
import { recordSet } from "../services/permit-sets/record-set.ts";
import { answerSet, findSet, notePages, type SetKey } from "../store/permit-set-rows.ts";

const Payload = z.object({ projectId: z.uuid(), id: z.uuid() });

/** How often it is looked whether the set is still waited for, and how far it is is written down. */
const lookEveryMs = 500;

/** Prints a set in a thread of its own, which ends when the set is stopped. */
export const printSet: Task = {
  name: printTask,
  async run(payload, context) {
    const key = Payload.parse(payload);
    try {
      await print(key, context);
    } catch (error) {
      if (!context.lastTry) throw error;
      const why = error instanceof Error ? error.message : String(error);
      context.log.error({ ...key, why }, "a permit set failed");
      await answerSet(context.database.connection, key, { state: "failed", why });
    }
  },
};

async function print(key: SetKey, { database, config, signal }: TaskContext): Promise<void> {
  const { connection } = database;
  const found = await findSet(connection, key);
  if (found === null || found.run.state !== "waiting") return;
  const { letter, units, upTo } = found.run;
  const source = await gatherSource(connection, { projectId: key.projectId, letter, units, upTo }, config.secretsKey);
  if (source === null) {
    await answerSet(connection, key, { state: "failed", why: `revision ${letter} has no assessment that can be read` });
    return;
  }
  const ended = new AbortController();
  const watch = watching(key, database.connection, ended);
  try {
    const printed = await printInThread(source, {
      signal: AbortSignal.any([signal, ended.signal]),
      onPages: watch.note,
    });
    await recordSet(database, key, printed);
  } catch (error) {
    if (!ended.signal.aborted) throw error; // else whoever stopped it has written so
  } finally {
    watch.close();
  }
}

/** Writes down how far a set is, and ends it once nobody waits for it. */
function watching(key: SetKey, db: TaskContext["database"]["connection"], ended: AbortController) {
  let pages = { done: 0, of: 0 };
  let noting = false;
  const timer = setInterval(() => {
    if (noting) return;
    noting = true;
    notePages(db, key, pages.done, pages.of)
      .then((waited) => (waited ? undefined : ended.abort()))
      .catch(() => undefined) // the database is away: asked again half a second later
      .finally(() => {
        noting = false;
      });
  }, lookEveryMs);
  return {
    note: (done: number, of: number) => {
      pages = { done, of };
    },
    close: () => clearInterval(timer),
  };
}
