import { longestReadingDays, usualReadingDays } from "@cornerway/schema";
import type { UseFormRegisterReturn } from "react-hook-form";
import { inputDay } from "../../controls/input-day.ts";
import { PersonField } from "../../controls/PersonField.tsx";

const dayMs = 86_400_000;

/** The last day that is offered to whoever reads. */
export const usualLastDay = (openedAt: number): string => inputDay(openedAt + usualReadingDays * dayMs);

/** The last day of whoever reads: from the day the form was opened to the longest there is. */
export function LastDayField({
  label,
  openedAt,
  missing,
  field,
}: {
  label: string;
  openedAt: number;
  missing: boolean;
  field: UseFormRegisterReturn;
}) {
  return (
    <PersonField label={label} fault={missing ? "The last day is missing." : undefined}>
      {(bound) => (
        <input
          {...bound}
          {...field}
          type="date"
          min={inputDay(openedAt)}
          max={inputDay(openedAt + (longestReadingDays - 1) * dayMs)}
        />
      )}
    </PersonField>
  );
}
