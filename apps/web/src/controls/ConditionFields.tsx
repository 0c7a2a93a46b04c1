import type { NewCondition } from "@cornerway/schema";
import { Command } from "./Command.tsx";
import { PersonField } from "./PersonField.tsx";
import { newUuid } from "../tools/new-uuid.ts";
import "./condition-fields.css";

type OwingRole = NewCondition["owedBy"];

/** Conditions being written: what must be done, and who does it. Each stays open until it is closed by itself. */
export function ConditionFields({
  name = "Condition",
  conditions,
  owing,
  onChange,
}: {
  /** What one of them is called. */
  name?: string;
  conditions: readonly NewCondition[];
  /** Roles that can owe one; the first is offered. */
  owing: readonly OwingRole[];
  onChange: (conditions: NewCondition[]) => void;
}) {
  const small = name.toLowerCase();
  const change = (id: string, more: Partial<NewCondition>) =>
    onChange(conditions.map((each) => (each.id === id ? { ...each, ...more } : each)));
  return (
    <div className="condition-fields">
      {conditions.map(({ id, text, owedBy }, at) => (
        <fieldset key={id}>
          <legend className="unseen">
            {name} {at + 1}
          </legend>
          <PersonField label={`What must be done, ${small} ${at + 1}`}>
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
            <PersonField label={`Who does it, ${small} ${at + 1}`}>
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
              <span className="unseen"> {`${small} ${at + 1}`}</span>
            </Command>
          </div>
        </fieldset>
      ))}
      <Command
        quiet
        onPress={() => onChange([...conditions, { id: newUuid(), text: "", owedBy: owing[0] ?? "architect" }])}
      >
        {`Add a ${small}`}
      </Command>
    </div>
  );
}

/** Why conditions cannot go as they are written; undefined when they can. */
export const whyNotConditions = (conditions: readonly NewCondition[]): string | undefined =>
  conditions.some(({ text }) => text.trim() === "") ? "A condition is still blank." : undefined;
