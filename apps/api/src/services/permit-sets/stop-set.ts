import type { PermitSetRun } from "@cornerway/schema";
import { done, refuse, type Outcome } from "../../outcome.ts";
import { printKey } from "../../queue/add-set.ts";
import { removeJob } from "../../queue/queue-rows.ts";
import type { Database } from "../../store/database.ts";
import { answerSet, findSet } from "../../store/permit-set-rows.ts";
import { actOf } from "../act-of.ts";
import type { Part } from "../part.ts";

/** Stops a set that is waited for: whoever prints it finds so at the next page, and ends its thread. */
export function stopSet(database: Database, sender: Part, id: string): Promise<Outcome<PermitSetRun>> {
  const key = { projectId: sender.projectId, id };
  return actOf(database, sender, "print-set", async (tx, part) => {
    const before = await findSet(tx, key);
    if (before === null) return refuse("not-found");
    if (before.run.state !== "waiting") return refuse("set-moved-on", { detail: `the set is ${before.run.state}` });
    await answerSet(tx, key, { state: "stopped", why: `stopped by ${part.person.name}` });
    await removeJob(tx, printKey(key));
    const after = await findSet(tx, key);
    return after === null ? refuse("not-found") : done(after.run);
  });
}
