import { dispositions, type Disposition, type StampWording } from "@cornerway/schema";
import { useState } from "react";
import { Command } from "../../controls/Command.tsx";
import { PersonField } from "../../controls/PersonField.tsx";
import { Refused } from "../../controls/Refused.tsx";
import { useWordStamps } from "../../data/account.ts";

/** How an engineer's office words the four dispositions; the meaning of each stays, and is said beside it. */
export function StampWordingForm({ wording }: { wording: StampWording }) {
  const word = useWordStamps();
  const [words, setWords] = useState<StampWording>(wording);
  const change = (disposition: Disposition, text: string) => setWords({ ...words, [disposition]: text });
  const given = dispositions.flatMap((each) => {
    const text = words[each]?.trim() ?? "";
    return text === "" ? [] : [[each, text] as const];
  });
  return (
    <form
      className="account-form"
      aria-labelledby="account-stamp"
      onSubmit={(event) => {
        event.preventDefault();
        word.mutate({ stampWording: Object.fromEntries(given) });
      }}
    >
      <h2 className="caption" id="account-stamp">
        Words of your office on a stamp, for engineers
      </h2>
      {dispositions.map((disposition) => (
        <PersonField key={disposition} label={disposition}>
          {(bound) => (
            <input
              {...bound}
              maxLength={60}
              placeholder={disposition}
              value={words[disposition] ?? ""}
              onChange={({ target }) => change(disposition, target.value)}
            />
          )}
        </PersonField>
      ))}
      <p>What each means stays as it is, and is said beside your words.</p>
      <Refused error={word.error} />
      <div className="account-acts">
        <Command type="submit" onPress={() => undefined}>
          Word it so
        </Command>
      </div>
    </form>
  );
}
