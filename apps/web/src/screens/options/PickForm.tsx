import type { OptionNow } from "@cornerway/schema";
import { useState } from "react";
import { Command } from "../../controls/Command.tsx";
import { PersonField } from "../../controls/PersonField.tsx";
import { Refused } from "../../controls/Refused.tsx";
import { usePickOption } from "../../data/option-set.ts";
import { useRoom, whyNot } from "../../room/room-context.ts";
import { newUuid } from "../../tools/new-uuid.ts";

/** Picks an alternative in two steps: that it is this one, then why, where there is something to say. */
export function PickForm({ setId, option }: { setId: string; option: OptionNow }) {
  const { project } = useRoom();
  const pick = usePickOption(project.id, setId);
  const [asked, ask] = useState(false);
  const [reason, setReason] = useState("");
  const asleepBecause = whyNot(project, "pick-option") ?? (pick.isPending ? "It is on its way." : undefined);
  const words = `Pick alternative ${option.place}`;
  if (!asked)
    return (
      <Command asleepBecause={asleepBecause} onPress={() => ask(true)}>
        {words}
      </Command>
    );
  const said = reason.trim();
  return (
    <form
      className="option-pick"
      onSubmit={(event) => {
        event.preventDefault();
        const { id: optionId, contentDigest } = option;
        if (asleepBecause === undefined)
          pick.mutate({ id: newUuid(), optionId, contentDigest, reason: said === "" ? null : said });
      }}
    >
      <PersonField label="Why, where there is something to say">
        {(bound) => (
          <textarea
            {...bound}
            rows={2}
            maxLength={2000}
            value={reason}
            onChange={({ target }) => setReason(target.value)}
          />
        )}
      </PersonField>
      <div className="twin-row">
        <Command next type="submit" asleepBecause={asleepBecause} onPress={() => undefined}>
          {words}
        </Command>
        <Command quiet onPress={() => ask(false)}>
          Leave it
        </Command>
      </div>
      <Refused error={pick.error} />
    </form>
  );
}
