import { useState } from "react";
import { Command } from "../../controls/Command.tsx";
import { PersonField } from "../../controls/PersonField.tsx";
import { Refused } from "../../controls/Refused.tsx";

export interface NameFormProps {
  label: string;
  command: string;
  most: number;
  asleepBecause?: string | undefined;
  error: unknown;
  /** Told the name; `done` empties the field once it is taken. */
  onName: (name: string, done: () => void) => void;
}

/** One name, and what is made under it. */
export function NameForm({ label, command, most, asleepBecause, error, onName }: NameFormProps) {
  const [name, setName] = useState("");
  const [fault, setFault] = useState<string | undefined>();
  return (
    <form
      className="option-name"
      noValidate
      onSubmit={(event) => {
        event.preventDefault();
        const said = name.trim();
        setFault(said === "" ? "Give it a name." : undefined);
        if (said !== "" && asleepBecause === undefined) onName(said, () => setName(""));
      }}
    >
      <PersonField label={label} fault={fault}>
        {(bound) => <input {...bound} value={name} maxLength={most} onChange={({ target }) => setName(target.value)} />}
      </PersonField>
      <Command type="submit" asleepBecause={asleepBecause} onPress={() => undefined}>
        {command}
      </Command>
      <Refused error={error} />
    </form>
  );
}
