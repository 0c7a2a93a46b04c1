import { useState } from "react";
import { Command } from "../../controls/Command.tsx";
import { PersonField } from "../../controls/PersonField.tsx";
import { Refused } from "../../controls/Refused.tsx";

export interface OptionWordFormProps {
  /** What is done, on both presses. */
  words: string;
  /** True where it is asked for by a quiet way. */
  quiet?: boolean;
  asleepBecause: string | undefined;
  error: unknown;
  /** Told the reason; null where nothing was said. */
  onSaid: (reason: string | null) => void;
}

/** A word on an alternative in two steps: that it is meant, then why, where there is something to say. */
export function OptionWordForm({ words, quiet = false, asleepBecause, error, onSaid }: OptionWordFormProps) {
  const [asked, ask] = useState(false);
  const [reason, setReason] = useState("");
  if (!asked)
    return (
      <Command quiet={quiet} asleepBecause={asleepBecause} onPress={() => ask(true)}>
        {words}
      </Command>
    );
  const said = reason.trim();
  return (
    <form
      className="option-pick"
      onSubmit={(event) => {
        event.preventDefault();
        if (asleepBecause === undefined) onSaid(said === "" ? null : said);
      }}
    >
      <PersonField label="Why, where there is something to say">
        {(bound) => (
          <textarea
            {...bound}
            rows={2}
            maxLength={2000}
            value={reason}
            onChange={({ target }) => setReason(target.value)}
          />
        )}
      </PersonField>
      <div className="twin-row">
        <Command next type="submit" asleepBecause={asleepBecause} onPress={() => undefined}>
          {words}
        </Command>
        <Command quiet onPress={() => ask(false)}>
          Leave it
        </Command>
      </div>
      <Refused error={error} />
    </form>
  );
}
