import { replyForms, type PlanCheckComment, type ReplyForm as Form } from "@cornerway/schema";
import { useState } from "react";
import { Command } from "../../controls/Command.tsx";
import { PersonField } from "../../controls/PersonField.tsx";
import { Refused } from "../../controls/Refused.tsx";
import { useAuthority } from "../../data/authority.ts";
import { useCommentStep } from "../../data/plan-check.ts";
import { useRoom } from "../../room/room-context.ts";
import { newUuid } from "../../tools/new-uuid.ts";

const empty = { text: "", sheet: "", detail: "", page: "" };
const places = ["sheet", "detail", "page"] as const;
const placeLabels = { sheet: "Sheet", detail: "Detail", page: "Page" } as const;

/** The reply to one comment, with the place in the set where it is found. */
export function ReplyForm({ comment }: { comment: PlanCheckComment }) {
  const { project, say } = useRoom();
  const step = useCommentStep(project.id, comment.id);
  const [form, chooseForm] = useState<Form>("done");
  const [written, write] = useState(empty);
  const [id, renew] = useState(newUuid);
  const change = (more: Partial<typeof empty>) => {
    write({ ...written, ...more });
    renew(newUuid());
  };
  const revision = project.revision;
  const authority = useAuthority(project.id);
  const asked = (place: (typeof places)[number]): boolean =>
    place === "sheet" || (authority.data?.profile.replyNames.includes(place) ?? false);
  const unnamed = places.find((place) => asked(place) && written[place].trim() === "");
  const because =
    revision === null
      ? "No revision was sent yet."
      : written.text.trim() === ""
        ? "Write the reply."
        : unnamed === undefined
          ? undefined
          : `Name the ${unnamed}: the authority asks for it.`;
  const press = () => {
    if (revision === null) return;
    const { text, sheet, detail, page } = written;
    const place = { sheet: sheet.trim(), detail: detail.trim() || null, page: page.trim() || null };
    step.mutate(
      { id, step: "answered", form, text: text.trim(), revision, ...place },
      { onSuccess: () => say(`Comment ${comment.number} is answered.`) },
    );
  };
  return (
    <details>
      <summary>Answer comment {comment.number}</summary>
      <div className="set-acts">
        <label className="field">
          <span>The reply says</span>
          <select
            value={form}
            onChange={({ target }) => chooseForm(replyForms.find((each) => each === target.value) ?? form)}
          >
            {replyForms.map((each) => (
              <option key={each}>{each}</option>
            ))}
          </select>
        </label>
        <PersonField label="Reply">
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
        {places.map((name) => (
          <PersonField key={name} label={asked(name) ? placeLabels[name] : `${placeLabels[name]}, if any`}>
            {(bound) => (
              <input
                {...bound}
                maxLength={40}
                value={written[name]}
                onChange={({ target }) => change({ [name]: target.value })}
              />
            )}
          </PersonField>
        ))}
        <Command onPress={press} asleepBecause={because}>
          {`Answer comment ${comment.number}`}
        </Command>
        <Refused error={step.error} />
      </div>
    </details>
  );
}
