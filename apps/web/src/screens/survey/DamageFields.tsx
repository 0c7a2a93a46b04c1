import { mostDamages } from "@cornerway/schema";
import { Command } from "../../controls/Command.tsx";
import { PersonField } from "../../controls/PersonField.tsx";
import { newUuid } from "../../tools/new-uuid.ts";
import { useUnits } from "../../units/use-units.ts";
import { damageWords } from "../../wording/survey-words.ts";
import { surveyedKinds, surveyedMembers, type TypedDamage } from "./inspection-draft.ts";

/** The damage found, one by one. */
export function DamageFields({
  damages,
  onDamages,
}: {
  damages: readonly TypedDamage[];
  onDamages: (damages: readonly TypedDamage[]) => void;
}) {
  const units = useUnits();
  const change = (key: string, more: Partial<TypedDamage>) =>
    onDamages(damages.map((each) => (each.key === key ? { ...each, ...more } : each)));
  const add = () =>
    onDamages([...damages, { key: newUuid(), member: "top side rail", place: "", kind: "bent", size: "" }]);
  return (
    <>
      {damages.map(({ key, member, place, kind, size }, at) => (
        <fieldset className="survey-fields" key={key}>
          <legend>Damage {at + 1}</legend>
          <PersonField label="Part">
            {(bound) => (
              <select
                {...bound}
                value={member}
                onChange={({ target }) =>
                  change(key, { member: surveyedMembers.find((each) => each === target.value) ?? member })
                }
              >
                {surveyedMembers.map((each) => (
                  <option key={each}>{each}</option>
                ))}
              </select>
            )}
          </PersonField>
          <PersonField label="Where on it">
            {(bound) => (
              <input
                {...bound}
                maxLength={120}
                value={place}
                onChange={({ target }) => change(key, { place: target.value })}
              />
            )}
          </PersonField>
          <PersonField label="What">
            {(bound) => (
              <select
                {...bound}
                value={kind}
                onChange={({ target }) =>
                  change(key, { kind: surveyedKinds.find((each) => each === target.value) ?? kind })
                }
              >
                {surveyedKinds.map((each) => (
                  <option key={each} value={each}>
                    {damageWords[each]}
                  </option>
                ))}
              </select>
            )}
          </PersonField>
          <PersonField label={`How deep, or how long, ${units === "US" ? "in" : "mm"}`}>
            {(bound) => (
              <input
                {...bound}
                inputMode="decimal"
                maxLength={20}
                value={size}
                onChange={({ target }) => change(key, { size: target.value })}
              />
            )}
          </PersonField>
          <Command quiet onPress={() => onDamages(damages.filter((each) => each.key !== key))}>
            {`Leave damage ${at + 1} out`}
          </Command>
        </fieldset>
      ))}
      <Command
        quiet
        onPress={add}
        asleepBecause={damages.length >= mostDamages ? `No more than ${mostDamages} at once.` : undefined}
      >
        Add a damage
      </Command>
    </>
  );
}
