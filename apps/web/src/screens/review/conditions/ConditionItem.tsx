import type { ConditionNow, ConditionStep } from "@cornerway/schema";
import { dayAndTimeOf } from "../../../controls/calendar.ts";
import { FollowActs, type FollowAct } from "../../../controls/FollowActs.tsx";
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
  const meets = state === "open" && project.roles.includes(owedBy);
  const judges = state !== "open" && project.roles.includes(author.role);
  if (!meets && !judges) return null;
  const meet: FollowAct = {
    ...{ command: "It is met so", needsWords: true },
    onPress: (text, clear) => follow.mutate({ met: { id: newUuid(), text } }, { onSuccess: clear }),
  };
  const own = steps.findLast(({ step }) => step === "met")?.by.id === me.id;
  const close: FollowAct = {
    ...{ command: "Close it", needsWords: false },
    asleepBecause: own ? "Whoever said that it is met does not close it." : undefined,
    onPress: (_text, clear) => follow.mutate({ judged: { step: "closed", id: newUuid() } }, { onSuccess: clear }),
  };
  const reopen: FollowAct = {
    ...{ command: "Open it again", needsWords: true },
    onPress: (text, clear) =>
      follow.mutate({ judged: { step: "reopened", id: newUuid(), text } }, { onSuccess: clear }),
  };
  return (
    <FollowActs
      label={meets ? "How it is met" : "Why it is open again"}
      acts={meets ? [meet] : state === "met" ? [close, reopen] : [reopen]}
      error={follow.error}
    />
  );
}
