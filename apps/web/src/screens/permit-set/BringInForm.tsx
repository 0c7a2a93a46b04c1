import { useState } from "react";
import { Command } from "../../controls/Command.tsx";
import { PersonField } from "../../controls/PersonField.tsx";
import { Refused } from "../../controls/Refused.tsx";
import { useBringInComments } from "../../data/plan-check.ts";
import { useRoom } from "../../room/room-context.ts";
import { newUuid } from "../../tools/new-uuid.ts";

/** A comment sheet of the authority: a table, or the numbered lines of its letter, laid in whole. */
export function BringInForm() {
  const { project, say } = useRoom();
  const bring = useBringInComments(project.id);
  const [text, write] = useState("");
  const [id, renew] = useState(newUuid);
  const form = looksLikeTable(text) ? "csv" : "lines";
  const change = (next: string) => {
    write(next);
    renew(newUuid());
  };
  const press = () =>
    bring.mutate(
      { id, form, text },
      {
        onSuccess: ({ count }) => {
          change("");
          say(`${count.in} comments are in the register.`);
        },
      },
    );
  return (
    <div className="set-acts">
      <PersonField label="Comments of the authority: a table with a head, or numbered lines">
        {(bound) => (
          <textarea
            {...bound}
            rows={6}
            maxLength={500_000}
            value={text}
            onChange={({ target }) => change(target.value)}
          />
        )}
      </PersonField>
      <PersonField label="Or a CSV file">
        {(bound) => (
          <input
            {...bound}
            type="file"
            accept=".csv,text/csv"
            onChange={({ target }) => {
              const file = target.files?.[0];
              if (file !== undefined) void file.text().then(change);
            }}
          />
        )}
      </PersonField>
      <Command
        onPress={press}
        asleepBecause={
          text.trim() === ""
            ? "Paste or choose the comments first."
            : bring.isPending
              ? "They are on their way."
              : undefined
        }
      >
        {form === "csv" ? "Bring in this table" : "Bring in these lines"}
      </Command>
      <Refused error={bring.error} />
    </div>
  );
}

/** The first line of a table names its columns, and none of them begins with a number. */
const looksLikeTable = (text: string): boolean => {
  const [first = ""] = text.trimStart().split(/\r?\n/);
  return first.includes(",") && !/^\s*\w{0,4}\d/.test(first);
};
