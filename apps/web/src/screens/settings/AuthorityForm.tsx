import { changeMarks, deltaSigns, replyPlaces, type AuthorityProfile } from "@cornerway/schema";
import { useState } from "react";
import { Command } from "../../controls/Command.tsx";
import { PersonField } from "../../controls/PersonField.tsx";
import { Refused } from "../../controls/Refused.tsx";
import { useDescribeAuthority } from "../../data/authority.ts";
import { useRoom, whyNot } from "../../room/room-context.ts";

/** The profile in fields; whoever keeps the comments lays it down. */
export function AuthorityForm({ profile }: { profile: AuthorityProfile }) {
  const { project, say } = useRoom();
  const describe = useDescribeAuthority(project.id);
  const [written, write] = useState(profile);
  const asleep = whyNot(project, "keep-comments");
  const change = (more: Partial<AuthorityProfile>) => write({ ...written, ...more });
  const name = written.name?.trim() ?? "";
  const press = () =>
    describe.mutate(
      { ...written, name: name === "" ? null : name },
      { onSuccess: () => say("Laid down: the next set is marked so.") },
    );
  const clean = written.marks === "none";
  return (
    <>
      <fieldset className="settings-authority" disabled={asleep !== undefined}>
        <legend className="unseen">How sets are marked and comments answered</legend>
        <PersonField label="Authority">
          {(bound) => (
            <input
              {...bound}
              maxLength={120}
              value={written.name ?? ""}
              onChange={({ target }) => change({ name: target.value })}
            />
          )}
        </PersonField>
        <ChoiceField
          label="Changes since the set before are marked by"
          chosen={written.marks}
          words={markWords}
          of={changeMarks}
          onChoose={(marks) => change({ marks })}
        />
        {clean ? null : (
          <>
            <ChoiceField
              label="In a delta stands"
              chosen={written.delta}
              words={deltaWords}
              of={deltaSigns}
              onChoose={(delta) => change({ delta })}
            />
            <ChoiceField
              label="Deltas of sets before"
              chosen={written.earlierDeltas}
              words={earlierWords}
              of={["taken off", "stay"]}
              onChoose={(earlierDeltas) => change({ earlierDeltas })}
            />
            <TickField
              label="The number of the change stands beside its delta"
              ticked={written.numbered}
              onTick={(numbered) => change({ numbered })}
            />
          </>
        )}
        {replyPlaces.map((place) => (
          <TickField
            key={place}
            label={`Each reply names the ${place} beside the sheet`}
            ticked={written.replyNames.includes(place)}
            onTick={(ticked) =>
              change({
                replyNames: replyPlaces.filter((each) => (each === place ? ticked : written.replyNames.includes(each))),
              })
            }
          />
        ))}
      </fieldset>
      <Command onPress={press} asleepBecause={asleep ?? (describe.isPending ? "It is on its way." : undefined)}>
        Lay down what the authority asks
      </Command>
      <Refused error={describe.error} />
    </>
  );
}

const markWords = {
  "clouds and deltas": "clouds, each with a delta",
  deltas: "deltas alone",
  none: "nothing: a clean set",
} as const;
const deltaWords = {
  "revision letter": "the letter of the revision",
  "issue number": "how often the set came again",
} as const;
const earlierWords = {
  "taken off": "are taken off with their clouds",
  stay: "stay on what is as that set had it",
} as const;

function ChoiceField<Choice extends string>({
  label,
  chosen,
  words,
  of,
  onChoose,
}: {
  label: string;
  chosen: Choice;
  words: Record<Choice, string>;
  of: readonly Choice[];
  onChoose: (choice: Choice) => void;
}) {
  return (
    <PersonField label={label}>
      {(bound) => (
        <select
          {...bound}
          value={chosen}
          onChange={({ target }) => onChoose(of.find((each) => each === target.value) ?? chosen)}
        >
          {of.map((each) => (
            <option key={each} value={each}>
              {words[each]}
            </option>
          ))}
        </select>
      )}
    </PersonField>
  );
}

const TickField = ({
  label,
  ticked,
  onTick,
}: {
  label: string;
  ticked: boolean;
  onTick: (ticked: boolean) => void;
}) => (
  <label className="tick">
    <input type="checkbox" checked={ticked} onChange={({ target }) => onTick(target.checked)} /> {label}
  </label>
);
