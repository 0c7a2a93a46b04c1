import { digestOf, type Condition, type NewCondition, type Role } from "@cornerway/schema";
import { refuse, refuseField, type Outcome } from "../../outcome.ts";
import type { Connection } from "../../store/connection.ts";
import { insertMatter, isMatterId, nextNumber } from "../../store/matter-rows.ts";

/** Refuses conditions whose ids are taken, or that the role that raises them would owe; undefined when they can be raised. */
export async function refuseConditions(
  tx: Connection,
  projectId: string,
  conditions: readonly NewCondition[],
  { pointer, raisedBy }: { pointer: string; raisedBy: Role },
): Promise<Outcome<never> | undefined> {
  const own = conditions.findIndex(({ owedBy }) => owedBy === raisedBy);
  if (own >= 0)
    return refuseField("body-invalid", `${pointer}/${own}/owedBy`, `the ${raisedBy} raises it: another owes it`);
  const ids = conditions.map(({ id }) => id);
  if (new Set(ids).size < ids.length) return refuseField("body-invalid", pointer, "two conditions have one id");
  for (const id of ids) if (await isMatterId(tx, projectId, id)) return refuse("id-reused");
  return undefined;
}

/** Numbers the conditions of a stamp, an answer or a check, and keeps each as a matter of its own. */
export async function raiseConditions(
  tx: Connection,
  projectId: string,
  conditions: readonly NewCondition[],
  { entry, ...raised }: Pick<Condition, "source" | "sourceId" | "revision" | "author" | "raisedAt"> & { entry: number },
): Promise<void> {
  const first = await nextNumber(tx, projectId, "condition");
  for (const [at, condition] of conditions.entries()) {
    const number = first + at;
    const body = { ...condition, ...raised, number };
    const row = { kind: "condition", id: condition.id, number, entry, bodyDigest: digestOf(condition) } as const;
    await insertMatter(tx, projectId, { ...row, body });
  }
}
