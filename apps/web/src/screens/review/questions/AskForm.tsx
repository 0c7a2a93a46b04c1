import type { QuestionView, Revision } from "@cornerway/schema";
import { useState } from "react";
import { Command } from "../../../controls/Command.tsx";
import { inputDay } from "../../../controls/input-day.ts";
import { PersonField } from "../../../controls/PersonField.tsx";
import { Refused } from "../../../controls/Refused.tsx";
import { useAskQuestion } from "../../../data/question.ts";
import { useRoom, whyNot } from "../../../room/room-context.ts";
import { Slip } from "../../../sheet/Slip.tsx";
import { newUuid } from "../../../tools/new-uuid.ts";
import { namesIn } from "../../../wording/name-of.ts";

const usualDays = 5;
const dayMs = 86_400_000;

/** A question to the engineer at the chosen element, in the view one looks at. */
export function AskForm({ revision, elementId, view }: { revision: Revision; elementId: string; view: QuestionView }) {
  const { project, say } = useRoom();
  const ask = useAskQuestion(project.id);
  const [openedAt] = useState(() => Date.now());
  const [open, setOpen] = useState(false);
  const [asked, setAsked] = useState({ wanted: "", mayGive: "", neededBy: inputDay(openedAt + usualDays * dayMs) });
  // One text, one id: pressed again after an answer that was lost, it is the same question.
  const [id, renewId] = useState(newUuid);
  const change = (more: Partial<typeof asked>) => {
    setAsked({ ...asked, ...more });
    renewId(newUuid());
  };
  const name = namesIn(revision.scheme)(elementId);
  const because = whyNot(project, "ask-question");
  if (because !== undefined) return null;
  if (!open)
    return (
      <p className="review-ask">
        <Command onPress={() => setOpen(true)}>{`Ask the engineer about ${name}`}</Command>
      </p>
    );
  const dispatch = () => {
    const { wanted, mayGive, neededBy } = asked;
    const body = { wanted: wanted.trim(), mayGive: mayGive.trim() === "" ? null : mayGive.trim(), neededBy };
    ask.mutate(
      { id, elementId, view, revision: revision.letter, ...body },
      {
        onSuccess: ({ number }) => {
          setOpen(false);
          change({ wanted: "", mayGive: "" });
          say(`Question ${number} on ${name} asked.`);
        },
      },
    );
  };
  return (
    <Slip label={`Question on ${name}, ${view}`} hand={project.roles[0]}>
      <PersonField label="What is wanted">
        {(bound) => (
          <textarea
            {...bound}
            rows={3}
            maxLength={4000}
            value={asked.wanted}
            onChange={({ target }) => change({ wanted: target.value })}
          />
        )}
      </PersonField>
      <PersonField label="What may give, if anything">
        {(bound) => (
          <textarea
            {...bound}
            rows={2}
            maxLength={2000}
            value={asked.mayGive}
            onChange={({ target }) => change({ mayGive: target.value })}
          />
        )}
      </PersonField>
      <PersonField label="Needed by">
        {(bound) => (
          <input
            {...bound}
            type="date"
            required
            min={inputDay(openedAt)}
            value={asked.neededBy}
            onChange={({ target }) => change({ neededBy: target.value })}
          />
        )}
      </PersonField>
      <div className="twin-row">
        <Command onPress={dispatch} asleepBecause={whyNotYet(asked, ask.isPending)}>
          {`Ask about ${name}`}
        </Command>
        <Command quiet onPress={() => setOpen(false)}>
          Lay it aside
        </Command>
      </div>
      <Refused error={ask.error} />
    </Slip>
  );
}

function whyNotYet({ wanted, neededBy }: { wanted: string; neededBy: string }, onItsWay: boolean): string | undefined {
  if (onItsWay) return "It is on its way.";
  if (wanted.trim() === "") return "Say what is wanted.";
  return neededBy === "" ? "Say by when." : undefined;
}
