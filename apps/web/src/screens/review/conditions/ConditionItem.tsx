import type { ConditionNow, ConditionStep } from "@cornerway/schema";
import { useState } from "react";
import { dayAndTimeOf } from "../../../controls/calendar.ts";
import { Command } from "../../../controls/Command.tsx";
import { PersonField } from "../../../controls/PersonField.tsx";
import { Refused } from "../../../controls/Refused.tsx";
import { useFollowCondition } from "../../../data/condition.ts";
import { useRoom } from "../../../room/room-context.ts";
import { newUuid } from "../../../tools/new-uuid.ts";
import { sideOf } from "../../../wording/owed-words.ts";

/** One condition: what must be done, who owes it, what was said of it, and what one may do about it now. */
export function ConditionItem({ condition }: { condition: ConditionNow }) {
  const { project } = useRoom();
  const { number, text, state, waitsFor, owedBy, author, revision, source, steps } = condition;
  return (
    <li>
      <p>
        Condition {number}, {state}
        {waitsFor === null ? "" : `: waits for ${sideOf(waitsFor, project.roles)}`}
      </p>
      <p className={`said-by-person hand-${author.role}`}>{text}</p>
      <p className="note-grey">
        {author.name} on the {source} of revision {revision}. Owed by {sideOf(owedBy, project.roles)}.
      </p>
      {steps.map((step) => (
        <StepLine key={step.id} step={step} />
      ))}
      <Acts condition={condition} />
    </li>
  );
}

const stepWords = { met: "Met", closed: "Closed", reopened: "Opened again" } as const;

function StepLine({ step }: { step: ConditionStep }) {
  return (
    <p className={`said-by-person hand-${step.by.role}`}>
      {stepWords[step.step]}
      {step.step === "closed" ? "." : `: ${step.text}`}{" "}
      <small className="lettered">
        {step.by.name}, {dayAndTimeOf(step.at)}
      </small>
    </p>
  );
}

function Acts({ condition: { id, state, owedBy, author, steps } }: { condition: ConditionNow }) {
  const { project, me } = useRoom();
  const follow = useFollowCondition(project.id, id);
  const [text, setText] = useState("");
  const meets = state === "open" && project.roles.includes(owedBy);
  const judges = state !== "open" && project.roles.includes(author.role);
  if (!meets && !judges) return null;
  const words = text.trim();
  const because = words === "" ? "Write it first." : undefined;
  const own = steps.findLast(({ step }) => step === "met")?.by.id === me.id;
  return (
    <div className="matter-acts">
      <PersonField label={meets ? "How it is met" : "Why it is open again"}>
        {(bound) => (
          <textarea
            {...bound}
            rows={2}
            maxLength={2000}
            value={text}
            onChange={({ target }) => setText(target.value)}
          />
        )}
      </PersonField>
      <div className="twin-row">
        {meets ? (
          <Command onPress={() => follow.mutate({ met: { id: newUuid(), text: words } })} asleepBecause={because}>
            It is met so
          </Command>
        ) : (
          <>
            {state === "met" ? (
              <Command
                onPress={() => follow.mutate({ judged: { step: "closed", id: newUuid() } })}
                asleepBecause={own ? "Whoever said that it is met does not close it." : undefined}
              >
                Close it
              </Command>
            ) : null}
            <Command
              onPress={() => follow.mutate({ judged: { step: "reopened", id: newUuid(), text: words } })}
              asleepBecause={because}
            >
              Open it again
            </Command>
          </>
        )}
      </div>
      <Refused error={follow.error} />
    </div>
  );
}
