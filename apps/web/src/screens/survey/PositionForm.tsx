import { useState } from "react";
import type { SurveyedContainerNow } from "@cornerway/schema";
import { Command } from "../../controls/Command.tsx";
import { PersonField } from "../../controls/PersonField.tsx";
import { Refused } from "../../controls/Refused.tsx";
import type { DraftStore } from "../../data/draft/draft-store.ts";
import { useDraft } from "../../data/draft/use-draft.ts";
import { usePlaceContainer, useSurvey } from "../../data/survey.ts";
import { useRoom } from "../../room/room-context.ts";
import { newUuid } from "../../tools/new-uuid.ts";

/** The architect assigns an accepted container to a unit of the draft, or releases it. */
export function PositionForm({ now }: { now: SurveyedContainerNow }) {
  const { project, draft, say } = useRoom();
  const place = usePlaceContainer(project.id, now.container.id);
  const { container, position } = now;
  const [text, setText] = useState("");
  if (position === null) return draft === null ? null : <AssignForm now={now} draft={draft} />;
  const words = text.trim();
  return (
    <div className="survey-form">
      <PersonField label={`Why it leaves ${position.tag}`}>
        {(bound) => <input {...bound} maxLength={2000} value={text} onChange={({ target }) => setText(target.value)} />}
      </PersonField>
      <Command
        quiet
        onPress={() =>
          place.mutate(
            { step: "released", id: newUuid(), text: words },
            { onSuccess: () => say(`Container ${container.number} leaves ${position.tag}.`) },
          )
        }
        asleepBecause={words === "" ? "Write why first." : undefined}
      >
        {`Take it out of ${position.tag}`}
      </Command>
      <Refused error={place.error} />
    </div>
  );
}

function AssignForm({ now: { container, state }, draft }: { now: SurveyedContainerNow; draft: DraftStore }) {
  const { project, say } = useRoom();
  const place = usePlaceContainer(project.id, container.id);
  const { scheme } = useDraft(draft);
  const taken = new Set((useSurvey(project.id).data?.containers ?? []).map(({ position }) => position?.elementId));
  const free = scheme.containers.filter(({ id, type }) => type === container.type && !taken.has(id));
  const [chosen, choose] = useState("");
  const elementId = free.some(({ id }) => id === chosen) ? chosen : (free[0]?.id ?? "");
  const tag = free.find(({ id }) => id === elementId)?.tag;
  const because =
    state !== "accepted"
      ? "Only a container that the engineer has accepted is assigned."
      : tag === undefined
        ? `No unit of the draft is a free ${container.type}.`
        : undefined;
  return (
    <div className="survey-form">
      <PersonField label="Place on the drawing">
        {(bound) => (
          <select {...bound} value={elementId} onChange={({ target }) => choose(target.value)}>
            {free.map((unit) => (
              <option key={unit.id} value={unit.id}>
                {unit.tag}
              </option>
            ))}
          </select>
        )}
      </PersonField>
      <Command
        onPress={() =>
          place.mutate(
            { step: "assigned", id: newUuid(), elementId },
            { onSuccess: () => say(`Container ${container.number} stands for ${tag}.`) },
          )
        }
        asleepBecause={because}
      >
        {tag === undefined ? "Assign it" : `Assign it to ${tag}`}
      </Command>
      <Refused error={place.error} />
    </div>
  );
}
