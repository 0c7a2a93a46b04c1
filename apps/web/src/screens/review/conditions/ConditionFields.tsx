import type { NewCondition } from "@cornerway/schema";
import { Command } from "../../../controls/Command.tsx";
import { PersonField } from "../../../controls/PersonField.tsx";
import { newUuid } from "../../../tools/new-uuid.ts";
import "./conditions.css";

type OwingRole = NewCondition["owedBy"];

/** Conditions being written: what must be done, and who does it. Each stays open until it is closed by itself. */
export function ConditionFields({
  conditions,
  owing,
  onChange,
}: {
  conditions: readonly NewCondition[];
  /** Roles that can owe one; the first is offered. */
  owing: readonly OwingRole[];
  onChange: (conditions: NewCondition[]) => void;
}) {
  const change = (id: string, more: Partial<NewCondition>) =>
    onChange(conditions.map((each) => (each.id === id ? { ...each, ...more } : each)));
  return (
    <div className="condition-fields">
      {conditions.map(({ id, text, owedBy }, at) => (
        <fieldset key={id}>
          <legend className="unseen">Condition {at + 1}</legend>
          <PersonField label={`What must be done, condition ${at + 1}`}>
            {(bound) => (
              <textarea
                {...bound}
                rows={2}
                maxLength={2000}
                value={text}
                onChange={({ target }) => change(id, { text: target.value })}
              />
            )}
          </PersonField>
          <div className="twin-row">
            <PersonField label={`Who does it, condition ${at + 1}`}>
              {(bound) => (
                <select
                  {...bound}
                  value={owedBy}
                  onChange={({ target }) =>
                    change(id, { owedBy: owing.find((role) => role === target.value) ?? owedBy })
                  }
                >
                  {owing.map((role) => (
                    <option key={role} value={role}>
                      the {role}
                    </option>
                  ))}
                </select>
              )}
            </PersonField>
            <Command quiet onPress={() => onChange(conditions.filter((each) => each.id !== id))}>
              Strike it out
              <span className="unseen"> condition {at + 1}</span>
            </Command>
          </div>
        </fieldset>
      ))}
      <Command
        quiet
        onPress={() => onChange([...conditions, { id: newUuid(), text: "", owedBy: owing[0] ?? "architect" }])}
      >
        Add a condition
      </Command>
    </div>
  );
}

/** Why conditions cannot go as they are written; undefined when they can. */
export const whyNotConditions = (conditions: readonly NewCondition[]): string | undefined =>
  conditions.some(({ text }) => text.trim() === "") ? "A condition is still blank." : undefined;
