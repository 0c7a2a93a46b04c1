import type { SurveyedContainer } from "@cornerway/schema";
import { useState } from "react";
import { Command } from "../../controls/Command.tsx";
import { inputDay } from "../../controls/input-day.ts";
import { PersonField } from "../../controls/PersonField.tsx";
import { Refused } from "../../controls/Refused.tsx";
import { useInspectContainer } from "../../data/survey.ts";
import { PhotoField } from "../../photos/PhotoField.tsx";
import { useRoom } from "../../room/room-context.ts";
import { newUuid } from "../../tools/new-uuid.ts";
import { useUnits } from "../../units/use-units.ts";
import { DamageFields } from "./DamageFields.tsx";
import { emptyInspection, readInspection, surveyedMembers, type TypedInspection } from "./inspection-draft.ts";

type TextField = Exclude<keyof TypedInspection, "damages" | "thickness" | "photos">;

const plateFields: readonly (readonly [TextField, string, "text" | "decimal"])[] = [
  ["approvalNumber", "Safety approval number", "text"],
  ["madeIn", "Made, year and month: 2019-04", "text"],
  ["tareKg", "Tare, kg", "decimal"],
  ["maxGrossKg", "Greatest gross mass, kg", "decimal"],
  ["stackingKg", "Allowable stacking at 1.8 g, kg", "decimal"],
  ["rackingKn", "Racking test force, kN", "decimal"],
];

/** What an inspection found: the plate, damage, thickness, the floor, with photos. */
export function InspectionForm({ container: { id, number, steps } }: { container: SurveyedContainer }) {
  const { project, say } = useRoom();
  const units = useUnits();
  const inspect = useInspectContainer(project.id, id);
  const [typed, setTyped] = useState(() => emptyInspection(inputDay(Date.now())));
  const [stepId, renew] = useState(newUuid);
  const type = (more: Partial<TypedInspection>) => {
    setTyped({ ...typed, ...more });
    renew(newUuid());
  };
  const read = readInspection(typed, stepId, units);
  const send = () => {
    if (!read.ok) return;
    inspect.mutate(read.inspection, {
      onSuccess: () => {
        setTyped(emptyInspection(inputDay(Date.now())));
        say(`What was found of container ${number} is kept.`);
      },
    });
  };
  const field = ([name, label, mode]: (typeof plateFields)[number]) => (
    <PersonField key={name} label={label}>
      {(bound) => (
        <input
          {...bound}
          inputMode={mode}
          maxLength={200}
          value={typed[name]}
          onChange={({ target }) => type({ [name]: target.value })}
        />
      )}
    </PersonField>
  );
  return (
    <details className="survey-inspect">
      <summary>{steps.some(({ step }) => step === "inspected") ? "Inspect it again" : "Inspect it"}</summary>
      <div className="survey-form">
        <PersonField label="Day of the inspection">
          {(bound) => (
            <input {...bound} type="date" value={typed.day} onChange={({ target }) => type({ day: target.value })} />
          )}
        </PersonField>
        <fieldset className="survey-fields">
          <legend>On the plate</legend>
          {plateFields.map(field)}
        </fieldset>
        <DamageFields damages={typed.damages} onDamages={(damages) => type({ damages })} />
        <fieldset className="survey-fields">
          <legend>Least thickness measured, {units === "US" ? "in" : "mm"}; empty where none was</legend>
          {surveyedMembers.map((member) => (
            <PersonField key={member} label={member}>
              {(bound) => (
                <input
                  {...bound}
                  inputMode="decimal"
                  maxLength={20}
                  value={typed.thickness[member] ?? ""}
                  onChange={({ target }) => type({ thickness: { ...typed.thickness, [member]: target.value } })}
                />
              )}
            </PersonField>
          ))}
          {field(["measuredWith", "Measured with", "text"])}
        </fieldset>
        {field(["floor", "Treatment of the floor, as on its own plate", "text"])}
        {field(["text", "What else was seen", "text"])}
        <PhotoField label="Photos: the plate first" photos={typed.photos} onPhotos={(photos) => type({ photos })} />
        <Command onPress={send} asleepBecause={read.ok ? undefined : read.why}>
          Keep what was found
        </Command>
        {read.ok ? null : <p className="note-grey">{read.why}</p>}
        <Refused error={inspect.error} />
      </div>
    </details>
  );
}
