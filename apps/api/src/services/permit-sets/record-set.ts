import { done, refuse, type Outcome } from "../../outcome.ts";
import type { Printed } from "../../permit-set/print-in-thread.ts";
import { append } from "../../record/append.ts";
import type { Database } from "../../store/database.ts";
import { answerSet, findSet, type SetKey } from "../../store/permit-set-rows.ts";

/** Writes down what was printed, and that it was: the entry after the head it was printed from, or later. */
export function recordSet(database: Database, key: SetKey, printed: Printed): Promise<Outcome<void>> {
  return database.act(key.projectId, async (tx) => {
    const found = await findSet(tx, key);
    if (found === null) return refuse("not-found");
    if (found.run.state !== "waiting") return done(undefined); // stopped meanwhile, or printed by another
    if (printed.kind === "refused") {
      await answerSet(tx, key, { state: "refused", why: printed.why });
      return done(undefined);
    }
    const { setDigest, pages, pdf } = printed;
    const { letter, units, upTo, askedBy } = found.run;
    await answerSet(tx, key, { state: "done", setDigest, pages, pdf });
    await append(tx, key.projectId, askedBy, () => ({
      kind: "set printed",
      ...{ letter, units, upTo, setDigest, pages },
    }));
    return done(undefined);
  });
}
