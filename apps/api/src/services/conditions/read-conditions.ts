import { Condition, conditionState, conditionWaitsFor, mayReadEntry, type ConditionNow } from "@cornerway/schema";
import type { Connection } from "../../store/connection.ts";
import { readMatters } from "../../store/matter-rows.ts";
import type { Part } from "../part.ts";

/** The conditions of a project in the order they were raised, each as it stands now; none for whoever may see none. */
export async function readConditions(
  db: Connection,
  { projectId, roles }: Pick<Part, "projectId" | "roles">,
): Promise<ConditionNow[]> {
  if (!mayReadEntry(roles, "condition followed")) return [];
  return (await readMatters(db, projectId, "condition", Condition)).map(conditionNow);
}

export const conditionNow = (condition: Condition): ConditionNow => ({
  ...condition,
  state: conditionState(condition),
  waitsFor: conditionWaitsFor(condition),
});
