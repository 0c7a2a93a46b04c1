import type { Revision } from "@cornerway/schema";
import { useQuestions } from "../../../data/question.ts";
import { useRoom } from "../../../room/room-context.ts";
import { namesIn } from "../../../wording/name-of.ts";
import { QuestionItem } from "./QuestionItem.tsx";
import "../../../controls/matter.css";
import "./questions.css";

/** The questions to the engineer. Those on the chosen element, and those that wait for oneself, lie open. */
export function QuestionList({
  revision,
  current,
  chosenId,
}: {
  revision: Revision;
  current: boolean;
  chosenId: string | null;
}) {
  const { project } = useRoom();
  const questions = useQuestions(project.id).data ?? [];
  if (questions.length === 0) return null;
  const nameOf = namesIn(revision.scheme);
  const isOpen = (elementId: string, owedBy: (typeof questions)[number]["owedBy"]) =>
    chosenId === null ? owedBy !== null && project.roles.includes(owedBy) : elementId === chosenId;
  return (
    <section className="questions" aria-label="Questions to the engineer">
      <h3 className="caption">Questions to the engineer</h3>
      {questions.map((question) => (
        <QuestionItem
          key={`${question.id} ${isOpen(question.elementId, question.owedBy)}`}
          question={question}
          revision={revision}
          current={current}
          open={isOpen(question.elementId, question.owedBy)}
          nameOf={nameOf}
        />
      ))}
    </section>
  );
}
