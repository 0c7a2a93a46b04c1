import { judgements, type SurveyedContainerNow, type SurveyJudgement } from "@cornerway/schema";
import { useState } from "react";
import { Command } from "../../controls/Command.tsx";
import { Refused } from "../../controls/Refused.tsx";
import { WordsField } from "../../controls/WordsField.tsx";
import { useJudgeContainer } from "../../data/survey.ts";
import { useRoom } from "../../room/room-context.ts";
import { newUuid } from "../../tools/new-uuid.ts";

const commands: Record<SurveyJudgement, string> = {
  accepted: "Accept this container",
  repair: "Ask for its repair",
  rejected: "Reject this container",
};

/** The engineer accepts a container, asks for its repair, or rejects it. */
export function JudgementForm({ now: { container, state, findings } }: { now: SurveyedContainerNow }) {
  const { project, say } = useRoom();
  const judge = useJudgeContainer(project.id, container.id);
  const [text, setText] = useState("");
  const words = text.trim();
  const beyond = findings.some((finding) => finding.beyond === true);
  const press = (outcome: SurveyJudgement) =>
    judge.mutate(
      { step: "judged", id: newUuid(), outcome, text: words === "" ? null : words },
      { onSuccess: () => (setText(""), say(`Container ${container.number}: ${outcome}.`)) },
    );
  const asleep = (outcome: SurveyJudgement): string | undefined => {
    if (outcome === "accepted") return beyond ? "Something is beyond its limit." : undefined;
    return words === "" ? "Write why first." : undefined;
  };
  return (
    <div className="survey-form">
      <WordsField label="What is to be repaired, or why" text={text} onText={setText} />
      <div className="twin-row">
        {judgements
          .filter((outcome) => outcome !== state)
          .map((outcome) => (
            <Command key={outcome} engineer onPress={() => press(outcome)} asleepBecause={asleep(outcome)}>
              {commands[outcome]}
            </Command>
          ))}
      </div>
      <Refused error={judge.error} />
    </div>
  );
}
