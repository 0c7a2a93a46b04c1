import { Command } from "../../../controls/Command.tsx";
import { PersonField } from "../../../controls/PersonField.tsx";
import "../../../controls/condition-fields.css";

/** Ways that would work, the cheapest first. */
export function OptionFields({
  options,
  most,
  onChange,
}: {
  options: readonly string[];
  most: number;
  onChange: (options: string[]) => void;
}) {
  return (
    <div className="condition-fields">
      {options.map((option, at) => (
        // Options have no identity but their place.
        // oxlint-disable-next-line react/no-array-index-key
        <PersonField key={at} label={at === 0 ? "First way, the cheapest" : `Way ${at + 1}`}>
          {(bound) => (
            <textarea
              {...bound}
              rows={2}
              maxLength={1000}
              value={option}
              onChange={({ target }) => onChange(options.map((each, place) => (place === at ? target.value : each)))}
            />
          )}
        </PersonField>
      ))}
      <Command
        quiet
        onPress={() => onChange([...options, ""])}
        asleepBecause={options.length >= most ? `No more than ${most} ways.` : undefined}
      >
        Add a way
      </Command>
    </div>
  );
}
