import { engineVersion } from "@cornerway/engine";
import { serviceActor } from "@cornerway/schema";
import { done, refuse, type Outcome } from "../../outcome.ts";
import { append } from "../../record/append.ts";
import type { Database } from "../../store/database.ts";
import { findOption, findOptionSet, insertAnswer, type OptionKey } from "../../store/option-rows.ts";
import type { Assessed } from "../record-assessment.ts";

/** Writes down what the engine said of an alternative, once, with the record entry by which people hear of it. */
export function recordOptionAnswer(database: Database, key: OptionKey, assessed: Assessed): Promise<Outcome<void>> {
  const { projectId, optionId } = key;
  return database.act(projectId, async (tx) => {
    const found = await findOption(tx, key);
    if (found === null) return refuse("not-found");
    if (found.answer.state !== "waiting") return done(undefined); // answered meanwhile by another worker
    const set = await findOptionSet(tx, projectId, found.setId);
    if (set === null) return refuse("not-found");
    const why = assessed.ok ? null : assessed.why;
    const resultDigest = assessed.ok ? assessed.resultDigest : null;
    const entry = await append(tx, projectId, serviceActor, () => ({
      kind: "option assessed",
      ...{ setId: found.setId, setNumber: set.set.number, optionId, place: found.option.place },
      ...{ verdict: assessed.ok ? assessed.assessment.verdict : "not checked", resultDigest, engineVersion, why },
    }));
    const row = { engineVersion, doneAt: entry.at };
    await insertAnswer(
      tx,
      key,
      assessed.ok
        ? { ...row, state: "done", result: assessed.assessment, resultDigest: assessed.resultDigest, why: null }
        : { ...row, state: "failed", result: null, resultDigest: null, why: assessed.why },
    );
    return done(undefined);
  });
}
