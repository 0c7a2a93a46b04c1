import { may, type Answer, type QuestionNow, type QuestionStep, type Revision } from "@cornerway/schema";
import { dateOf, dayAndTimeOf } from "../../../controls/calendar.ts";
import { useRoom } from "../../../room/room-context.ts";
import { answerWords } from "../../../wording/follow-sentence.ts";
import type { NameOf } from "../../../wording/name-of.ts";
import { sideOf } from "../../../wording/owed-words.ts";
import { standingSentence } from "../../../wording/standing-sentence.ts";
import { AnswerForm } from "./AnswerForm.tsx";
import { FollowForm } from "./FollowForm.tsx";

/** One question with all that followed on it, and what one may do about it now. */
export function QuestionItem({
  question,
  revision,
  current,
  open,
  nameOf,
}: {
  question: QuestionNow;
  revision: Revision;
  current: boolean;
  open: boolean;
  nameOf: NameOf;
}) {
  const { project } = useRoom();
  const { number, elementId, view, wanted, mayGive, neededBy, author, askedAt, state, owedBy, standing } = question;
  const answers = may(project.roles, "answer-question") && state !== "closed";
  const asked = project.roles.includes(author.role) && state !== "asked";
  return (
    <details className="matter" open={open}>
      <summary>
        Question {number} on {nameOf(elementId)}, {state}
        {owedBy === null ? "" : `: waits for ${sideOf(owedBy, project.roles)}`}
      </summary>
      <p className={`said-by-person hand-${author.role}`}>{wanted}</p>
      {mayGive === null ? null : <p className={`said-by-person hand-${author.role}`}>May give: {mayGive}</p>}
      <p className="note-grey">
        {author.name}, {dayAndTimeOf(askedAt)}, on the {view} of revision {question.revision}. Needed by{" "}
        {dateOf(neededBy)}.
      </p>
      {question.steps.map((step) => (
        <StepLines key={step.id} step={step} />
      ))}
      {standing === null ? null : (
        <p className={standing.state === "stale" ? "matter-stale" : "note-grey"}>
          {standing.state === "stale" ? "The answer is stale. " : ""}
          {standingSentence(standing, nameOf)}
        </p>
      )}
      {answers && current ? <AnswerForm question={question} revision={revision} /> : null}
      {asked ? <FollowForm question={question} /> : null}
    </details>
  );
}

const stepWords: Record<QuestionStep["step"], string> = {
  answered: "",
  "information given": "What was wanted to know: ",
  closed: "Closed.",
  reopened: "Opened again: ",
};

function StepLines({ step }: { step: QuestionStep }) {
  const by = (
    <footer>
      {step.by.name}, {dayAndTimeOf(step.at)}
      {step.step === "answered" ? `, for revision ${step.revision}` : ""}
    </footer>
  );
  if (step.step === "answered")
    return (
      <blockquote className={`comment hand-${step.by.role}`}>
        <AnswerLines answer={step.answer} />
        {by}
      </blockquote>
    );
  return (
    <blockquote className={`comment hand-${step.by.role}`}>
      <p>
        {stepWords[step.step]}
        {step.step === "closed" ? "" : step.text}
      </p>
      {by}
    </blockquote>
  );
}

function AnswerLines({ answer }: { answer: Answer }) {
  const listed =
    answer.kind === "with conditions"
      ? answer.conditions.map(({ text }) => text)
      : answer.kind === "no, but these options"
        ? answer.options
        : [];
  return (
    <>
      <p>
        <b>{answerWords[answer.kind]}.</b> {answer.text}
      </p>
      {listed.length === 0 ? null : (
        <ol>
          {listed.map((text) => (
            <li key={text}>{text}</li>
          ))}
        </ol>
      )}
    </>
  );
}
