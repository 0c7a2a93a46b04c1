import { lastAnswer, type NewQuestionStep, type QuestionNow } from "@cornerway/schema";
import { useState } from "react";
import { Command } from "../../../controls/Command.tsx";
import { PersonField } from "../../../controls/PersonField.tsx";
import { Refused } from "../../../controls/Refused.tsx";
import { useFollowQuestion } from "../../../data/question.ts";
import { useRoom } from "../../../room/room-context.ts";
import { newUuid } from "../../../tools/new-uuid.ts";

/** What the side that asked does: gives the information wanted, closes the question, or opens it again. */
export function FollowForm({ question }: { question: QuestionNow }) {
  const { project, me, say } = useRoom();
  const follow = useFollowQuestion(project.id, question.id);
  const [text, setText] = useState("");
  const { number, state } = question;
  const take = (step: NewQuestionStep, said: string) =>
    follow.mutate(step, {
      onSuccess: () => {
        setText("");
        say(`Question ${number} ${said}.`);
      },
    });
  const words = text.trim();
  const because = words === "" ? "Write it first." : undefined;
  const own = lastAnswer(question)?.by.id === me.id;
  return (
    <div className="matter-acts">
      <PersonField label={state === "needs information" ? "What the engineer wants to know" : "Why it is open again"}>
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
        {state === "needs information" ? (
          <Command
            onPress={() => take({ step: "information given", id: newUuid(), text: words }, "has the information")}
            asleepBecause={because}
          >
            {`Tell the engineer for question ${number}`}
          </Command>
        ) : (
          <>
            {state === "answered" ? (
              <Command
                onPress={() => take({ step: "closed", id: newUuid() }, "closed")}
                asleepBecause={own ? "Whoever answered does not close it." : undefined}
              >
                {`Close question ${number}`}
              </Command>
            ) : null}
            <Command
              onPress={() => take({ step: "reopened", id: newUuid(), text: words }, "opened again")}
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
