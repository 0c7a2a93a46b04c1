import { answerKinds, mostOptions, type Answer, type AnswerKind, type NewCondition } from "@cornerway/schema";
import type { QuestionNow, Revision } from "@cornerway/schema";
import { useState } from "react";
import { Command } from "../../../controls/Command.tsx";
import { PersonField } from "../../../controls/PersonField.tsx";
import { Refused } from "../../../controls/Refused.tsx";
import { useAnswerQuestion } from "../../../data/question.ts";
import { useRoom } from "../../../room/room-context.ts";
import { newUuid } from "../../../tools/new-uuid.ts";
import { answerWords } from "../../../wording/follow-sentence.ts";
import { ConditionFields, whyNotConditions } from "../../../controls/ConditionFields.tsx";
import { OptionFields } from "./OptionFields.tsx";

/** An answer being written. */
interface Written {
  kind: AnswerKind;
  text: string;
  conditions: NewCondition[];
  options: string[];
}

/** The engineer's answer to a question, for the revision on the screen. */
export function AnswerForm({ question, revision }: { question: QuestionNow; revision: Revision }) {
  const { project, say } = useRoom();
  const answer = useAnswerQuestion(project.id, question.id);
  const [written, setWritten] = useState<Written>({ kind: "as drawn", text: "", conditions: [], options: [""] });
  const [id, renewId] = useState(newUuid);
  const change = (more: Partial<Written>) => {
    setWritten({ ...written, ...more });
    renewId(newUuid());
  };
  const { letter, contentDigest, resultDigest } = revision;
  const given = answerOf(written);
  const dispatch = () => {
    if (resultDigest === null || typeof given === "string") return;
    answer.mutate(
      { id, revision: letter, contentDigest, resultDigest, answer: given },
      { onSuccess: () => say(`Question ${question.number} answered: ${answerWords[given.kind]}.`) },
    );
  };
  return (
    <div className="matter-acts">
      <PersonField label="Answer">
        {(bound) => (
          <select
            {...bound}
            value={written.kind}
            onChange={({ target }) => change({ kind: answerKinds.find((kind) => kind === target.value) ?? "as drawn" })}
          >
            {answerKinds.map((kind) => (
              <option key={kind} value={kind}>
                {answerWords[kind]}
              </option>
            ))}
          </select>
        )}
      </PersonField>
      <PersonField label={textLabel[written.kind]}>
        {(bound) => (
          <textarea
            {...bound}
            rows={3}
            maxLength={4000}
            value={written.text}
            onChange={({ target }) => change({ text: target.value })}
          />
        )}
      </PersonField>
      {written.kind === "with conditions" ? (
        <ConditionFields
          conditions={written.conditions}
          owing={["architect", "owner"]}
          onChange={(conditions) => change({ conditions })}
        />
      ) : null}
      {written.kind === "no, but these options" ? (
        <OptionFields options={written.options} most={mostOptions} onChange={(options) => change({ options })} />
      ) : null}
      <Command engineer onPress={dispatch} asleepBecause={whyNotYet(given, resultDigest, answer.isPending)}>
        {`Answer question ${question.number} for revision ${letter}`}
      </Command>
      <Refused error={answer.error} />
    </div>
  );
}

const textLabel: Record<AnswerKind, string> = {
  "as drawn": "In your own words, if any are needed",
  "with conditions": "In your own words, if any are needed",
  "no, but these options": "Why not",
  "need information": "What must be known",
};

/** The answer as it would go, or what is still missing. */
function answerOf({ kind, text, conditions, options }: Written): Answer | string {
  const words = text.trim();
  if (kind === "as drawn") return { kind, text: words === "" ? null : words };
  if (kind === "with conditions") {
    if (conditions.length === 0) return "Write the first condition.";
    return whyNotConditions(conditions) ?? { kind, text: words === "" ? null : words, conditions };
  }
  if (words === "") return kind === "need information" ? "Say what must be known." : "Say why not.";
  if (kind === "need information") return { kind, text: words };
  const named = options.map((option) => option.trim()).filter((option) => option !== "");
  return named.length === 0 ? "Name one way that works." : { kind, text: words, options: named };
}

function whyNotYet(given: Answer | string, resultDigest: string | null, onItsWay: boolean): string | undefined {
  if (resultDigest === null) return "This revision is not checked yet.";
  if (typeof given === "string") return given;
  return onItsWay ? "It is on its way." : undefined;
}
