import { z } from "zod";
import { ConditionId } from "./ids.ts";
import { personText } from "./text.ts";

/** Who can owe what a condition asks for. */
export const owingRoles = ["architect", "engineer", "owner"] as const;
export const OwingRole = z.enum(owingRoles).meta({ id: "OwingRole" });

/** On one stamp, in one answer, in one check. */
export const mostConditions = 20;

/** One thing that must be done, as it is written on a stamp, in an answer or in a check. */
export const NewCondition = z
  .strictObject({ id: ConditionId, text: personText(2000), owedBy: OwingRole })
  .meta({ id: "NewCondition" });
export type NewCondition = z.infer<typeof NewCondition>;
