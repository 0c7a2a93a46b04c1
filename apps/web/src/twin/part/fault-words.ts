import type { UnitSystem } from "@cornerway/schema";
import type { z } from "zod";
import { sayValue, type PartField } from "./part-field.ts";

/** What is wrong with an element, by the path of the field it is typed in. */
export function faultsByField(
  fields: readonly PartField[],
  issues: readonly z.core.$ZodIssue[],
  units: UnitSystem,
): Record<string, string> {
  const faults: Record<string, string> = {};
  for (const issue of issues) {
    const path = issue.path.join(".");
    const field = fields.find((each) => each.path === path) ?? fields.find((each) => each.path.startsWith(`${path}.`));
    const key = field?.path ?? "";
    faults[key] ??= faultWords(issue, field, units);
  }
  return faults;
}

function faultWords(issue: z.core.$ZodIssue, field: PartField | undefined, units: UnitSystem): string {
  const told = (value: unknown) => (field === undefined ? String(value) : sayValue(field, Number(value), units));
  if (issue.code === "too_small")
    return issue.origin === "string" ? "Write it in words." : `At least ${told(issue.minimum)}.`;
  if (issue.code === "too_big")
    return issue.origin === "string" ? `At most ${issue.maximum} letters.` : `At most ${told(issue.maximum)}.`;
  if (issue.code === "invalid_type") return "State this as well, or leave all of them empty.";
  return `${issue.message.charAt(0).toUpperCase()}${issue.message.slice(1)}.`;
}
