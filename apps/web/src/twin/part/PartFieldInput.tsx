import { PersonField } from "../../controls/PersonField.tsx";
import { useUnits } from "../../units/use-units.ts";
import { fieldLabel, type PartField } from "./part-field.ts";
import { sectionChoices } from "./section-choices.ts";

interface PartFieldInputProps {
  field: PartField;
  text: string;
  fault: string | undefined;
  readOnly: boolean;
  onText: (text: string) => void;
}

/** One field of an element: a number with its unit, a choice, or words. */
export function PartFieldInput({ field, text, fault, readOnly, onText }: PartFieldInputProps) {
  const units = useUnits();
  return (
    <div className={widthOf[field.as]}>
      <PersonField label={fieldLabel(field, units)} fault={fault}>
        {(bound) => {
          const options = optionsOf(field, text);
          if (options !== null)
            return (
              <select
                {...bound}
                value={text}
                aria-disabled={readOnly || undefined}
                onChange={({ target }) => {
                  if (!readOnly) onText(target.value);
                }}
              >
                {options.map(([value, words]) => (
                  <option key={value} value={value}>
                    {words}
                  </option>
                ))}
              </select>
            );
          if (field.as === "text" && field.long === true)
            return (
              <textarea
                {...bound}
                value={text}
                rows={2}
                readOnly={readOnly}
                placeholder={field.otherwise}
                onChange={({ target }) => onText(target.value)}
              />
            );
          return (
            <input
              {...bound}
              value={text}
              className={field.as === "text" ? undefined : "part-number"}
              inputMode={field.as === "text" ? "text" : "decimal"}
              autoComplete="off"
              placeholder={field.otherwise}
              readOnly={readOnly}
              onChange={({ target }) => onText(target.value)}
            />
          );
        }}
      </PersonField>
    </div>
  );
}

const widthOf: Readonly<Record<PartField["as"], string>> = {
  quantity: "part-third",
  "small length": "part-third",
  number: "part-third",
  choice: "part-half",
  section: "part-half",
  "yes or no": "part-half",
  text: "part-whole",
};

/** What one may choose from; null for what is typed. A value no longer on offer stays choosable. */
function optionsOf(field: PartField, text: string): (readonly [string, string])[] | null {
  if (field.as === "yes or no")
    return [
      [field.yes, field.yes],
      [field.no, field.no],
    ];
  if (field.as !== "choice" && field.as !== "section") return null;
  const options = field.as === "section" ? sectionChoices[field.of] : field.options;
  const absent = field.otherwise === undefined ? [] : [["", field.otherwise] as const];
  const known = text === "" || options.some(([value]) => value === text);
  return [...absent, ...options, ...(known ? [] : [[text, text] as const])];
}
