import type { SealState } from "@cornerway/schema";
import { mostConfirmed } from "@cornerway/schema";
import { useState } from "react";
import { dayAndTimeOf } from "../../controls/calendar.ts";
import { Command } from "../../controls/Command.tsx";
import { PersonField } from "../../controls/PersonField.tsx";
import { Refused } from "../../controls/Refused.tsx";
import { useConfirmValues } from "../../data/seal.ts";
import { useRoom, whyNot } from "../../room/room-context.ts";
import { newUuid } from "../../tools/new-uuid.ts";

/** Values from memory that enter the answer, and who held which against the published text. */
export function MemorySection({ seal }: { seal: SealState }) {
  const { project } = useRoom();
  const values = seal.hindrances.flatMap((each) => (each.why === "from memory" ? [each.value] : []));
  if (values.length === 0 && seal.confirmations.length === 0) return null;
  return (
    <section aria-labelledby="seal-memory">
      <h2 className="caption" id="seal-memory">
        Values from memory
      </h2>
      {seal.confirmations.map(({ id, values: held, against, author, confirmedAt }) => (
        <details className="matter" key={id}>
          <summary>
            {held.length === 1 ? "1 value" : `${held.length} values`} confirmed by {author.name},{" "}
            {dayAndTimeOf(confirmedAt)}
          </summary>
          <p className="said-by-person hand-engineer">Held against {against}.</p>
          <ul className="seal-list">
            {held.map((value) => (
              <li key={value}>{value}</li>
            ))}
          </ul>
        </details>
      ))}
      {values.length === 0 ? null : (
        <OpenValues values={values} mine={whyNot(project, "confirm-value") === undefined} />
      )}
    </section>
  );
}

function OpenValues({ values, mine }: { values: readonly string[]; mine: boolean }) {
  const { project, say } = useRoom();
  const confirm = useConfirmValues(project.id);
  const [chosen, choose] = useState<readonly string[]>([]);
  const [against, setAgainst] = useState("");
  const here = chosen.filter((value) => values.includes(value));
  const dispatch = () =>
    confirm.mutate(
      { id: newUuid(), values: [...here], against: against.trim() },
      { onSuccess: ({ values: held }) => say(`${held.length} confirmed.`) },
    );
  if (!mine)
    return (
      <ul className="seal-list">
        {values.map((value) => (
          <li key={value}>{value}</li>
        ))}
      </ul>
    );
  const because =
    here.length === 0
      ? "Choose what was held against the text."
      : here.length > mostConfirmed
        ? `No more than ${mostConfirmed} at once.`
        : against.trim() === ""
          ? "Name the text."
          : undefined;
  return (
    <div className="seal-acts">
      <fieldset className="seal-values">
        <legend>Held against the published text</legend>
        <div>
          {values.map((value) => (
            <label key={value}>
              <input
                type="checkbox"
                checked={here.includes(value)}
                onChange={({ target }) =>
                  choose(target.checked ? [...here, value] : here.filter((each) => each !== value))
                }
              />
              <span>{value}</span>
            </label>
          ))}
        </div>
      </fieldset>
      <PersonField label="The text: document, edition, place">
        {(bound) => (
          <input {...bound} maxLength={1000} value={against} onChange={({ target }) => setAgainst(target.value)} />
        )}
      </PersonField>
      <Command engineer onPress={dispatch} asleepBecause={because}>
        {here.length === 0 ? "Confirm them" : `Confirm ${here.length}`}
      </Command>
      <Refused error={confirm.error} />
    </div>
  );
}
