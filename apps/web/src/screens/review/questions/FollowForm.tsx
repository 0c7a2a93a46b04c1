import { lastAnswer, type NewQuestionStep, type QuestionNow } from "@cornerway/schema";
import { FollowActs, type FollowAct } from "../../../controls/FollowActs.tsx";
import { useFollowQuestion } from "../../../data/question.ts";
import { useRoom } from "../../../room/room-context.ts";
import { newUuid } from "../../../tools/new-uuid.ts";

/** What the side that asked does: gives the information wanted, closes the question, or opens it again. */
export function FollowForm({ question }: { question: QuestionNow }) {
  const { project, me, say } = useRoom();
  const follow = useFollowQuestion(project.id, question.id);
  const { number, state } = question;
  const take = (step: NewQuestionStep, said: string, clear: () => void) =>
    follow.mutate(step, {
      onSuccess: () => {
        clear();
        say(`Question ${number} ${said}.`);
      },
    });
  const tell: FollowAct = {
    ...{ command: `Tell the engineer for question ${number}`, needsWords: true },
    onPress: (text, clear) => take({ step: "information given", id: newUuid(), text }, "has the information", clear),
  };
  const close: FollowAct = {
    ...{ command: `Close question ${number}`, needsWords: false },
    asleepBecause: lastAnswer(question)?.by.id === me.id ? "Whoever answered does not close it." : undefined,
    onPress: (_text, clear) => take({ step: "closed", id: newUuid() }, "closed", clear),
  };
  const reopen: FollowAct = {
    ...{ command: "Open it again", needsWords: true },
    onPress: (text, clear) => take({ step: "reopened", id: newUuid(), text }, "opened again", clear),
  };
  const wantsWords = state === "needs information";
  return (
    <FollowActs
      label={wantsWords ? "What the engineer wants to know" : "Why it is open again"}
      acts={wantsWords ? [tell] : state === "answered" ? [close, reopen] : [reopen]}
      error={follow.error}
    />
  );
}
