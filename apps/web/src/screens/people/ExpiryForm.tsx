import { longestReadingDays } from "@cornerway/schema";
import { useState } from "react";
import { Command } from "../../controls/Command.tsx";
import { PersonField } from "../../controls/PersonField.tsx";
import { endOfDay, inputDay } from "../../controls/input-day.ts";

/** Says anew on which day a reader's part ends. */
export function ExpiryForm({
  name,
  endsAt,
  onEnd,
}: {
  name: string;
  endsAt: string | null;
  onEnd: (expiresAt: string) => void;
}) {
  const [openedAt] = useState(() => Date.now());
  const [day, setDay] = useState(inputDay(endsAt ?? openedAt));
  return (
    <form
      className="people-expiry"
      onSubmit={(event) => {
        event.preventDefault();
        if (day !== "") onEnd(endOfDay(day));
      }}
    >
      <PersonField label={`Last day of ${name}`}>
        {(bound) => (
          <input
            {...bound}
            type="date"
            required
            min={inputDay(openedAt)}
            max={inputDay(openedAt + (longestReadingDays - 1) * 86_400_000)}
            value={day}
            onChange={({ target }) => setDay(target.value)}
          />
        )}
      </PersonField>
      <Command quiet type="submit" onPress={() => undefined}>
        Let it end then
      </Command>
    </form>
  );
}
