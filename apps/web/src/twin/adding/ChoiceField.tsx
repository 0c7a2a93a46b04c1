import { PersonField } from "../../controls/PersonField.tsx";

/** One of a few words. */
export function ChoiceField<T extends string>({
  label,
  value,
  options,
  onChange,
}: {
  label: string;
  value: T;
  options: readonly (T | readonly [value: T, words: string])[];
  onChange: (value: T) => void;
}) {
  const known = options.map((option) => (typeof option === "string" ? ([option, option] as const) : option));
  return (
    <PersonField label={label}>
      {(bound) => (
        <select
          {...bound}
          value={value}
          onChange={({ target }) => {
            const found = known.find(([each]) => each === target.value);
            if (found !== undefined) onChange(found[0]);
          }}
        >
          {known.map(([each, words]) => (
            <option key={each} value={each}>
              {words}
            </option>
          ))}
        </select>
      )}
    </PersonField>
  );
}
