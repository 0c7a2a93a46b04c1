import type { NewCondition, Revision } from "@cornerway/schema";
import { useState } from "react";
import { Command } from "../../controls/Command.tsx";
import { ConditionFields, whyNotConditions } from "../../controls/ConditionFields.tsx";
import { PersonField } from "../../controls/PersonField.tsx";
import { Refused } from "../../controls/Refused.tsx";
import { useCheckRevision } from "../../data/seal.ts";
import { useRoom } from "../../room/room-context.ts";
import { newUuid } from "../../tools/new-uuid.ts";

/** A check being written: what was checked and how, and the points that stay open. */
export function CheckForm({ revision }: { revision: Revision }) {
  const { project, say } = useRoom();
  const check = useCheckRevision(project.id);
  const [written, setWritten] = useState<{ text: string; points: NewCondition[] }>({ text: "", points: [] });
  const [id, renewId] = useState(newUuid);
  const change = (more: Partial<typeof written>) => {
    setWritten({ ...written, ...more });
    renewId(newUuid());
  };
  const { letter, contentDigest, resultDigest } = revision;
  const { text, points } = written;
  const outcome = points.length === 0 ? "agrees" : "points open";
  const dispatch = () => {
    if (resultDigest === null) return;
    check.mutate(
      { id, revision: letter, contentDigest, resultDigest, outcome, text: text.trim(), points },
      {
        onSuccess: () => {
          change({ text: "", points: [] });
          say(`Revision ${letter} checked.`);
        },
      },
    );
  };
  const because =
    resultDigest === null
      ? "This revision is not checked by the engine yet."
      : text.trim() === ""
        ? "Say what was checked, and how."
        : whyNotConditions(points);
  return (
    <div className="seal-acts">
      <PersonField label="What was checked, and how">
        {(bound) => (
          <textarea
            {...bound}
            rows={3}
            maxLength={4000}
            value={text}
            onChange={({ target }) => change({ text: target.value })}
          />
        )}
      </PersonField>
      <ConditionFields
        name="Point"
        conditions={points}
        owing={["engineer", "architect"]}
        onChange={(next) => change({ points: next })}
      />
      <Command engineer onPress={dispatch} asleepBecause={because}>
        {points.length === 0 ? `Agree with revision ${letter}` : `Leave ${points.length} open on revision ${letter}`}
      </Command>
      <Refused error={check.error} />
    </div>
  );
}
