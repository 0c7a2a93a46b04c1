import type { Operation } from "@cornerway/schema";
import type { Choice } from "../../permit-set/set-source.ts";
import type { Connection } from "../../store/connection.ts";
import { readActsThatWrote } from "../../store/draft-rows.ts";
import { readEntriesNumbered } from "../../store/record-rows.ts";
import { findRequestTakenInBy } from "../../store/request-rows.ts";

/**
 * Who chose the rule of the sheet walls that stands in a revision: the last act up to the draft it was sent with that altered the rule, and
 * the request it took in. Readers do not see what was drawn; this one name is part of what a set has to say.
 */
export async function sheetWallsChosen(db: Connection, projectId: string, sentWith: number): Promise<Choice | null> {
  const acts = await readActsThatWrote(db, projectId, { after: 0, keys: ["basis"] });
  const act = acts.find(
    ({ number, operations, inverse }) => number <= sentWith && ruleIn(operations) !== ruleIn(inverse),
  );
  if (act === undefined) return null;
  const [entry] = await readEntriesNumbered(db, projectId, [act.entry]);
  if (entry === undefined) throw new Error(`sheetWallsChosen: the record has no entry ${act.entry}`);
  const request = await findRequestTakenInBy(db, projectId, act.id);
  return {
    drawn: { by: entry.actor.name, role: entry.actor.role, at: entry.at },
    asked: request && { by: request.author.name, role: request.author.role, at: request.madeAt },
  };
}

function ruleIn(operations: readonly Operation[]): string | undefined {
  const change = operations.findLast(({ kind }) => kind === "basis.change");
  return change?.kind === "basis.change" ? JSON.stringify(change.basis.sheetWalls) : undefined;
}
