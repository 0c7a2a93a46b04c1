import { mostOperations, operationsBetween, pickedOf, whyFull } from "@cornerway/schema";
import type { OptionSetNow, Scheme } from "@cornerway/schema";
import { useState } from "react";
import { Command } from "../../controls/Command.tsx";
import type { DraftSnapshot, DraftStore } from "../../data/draft/draft-store.ts";
import { useDraft } from "../../data/draft/use-draft.ts";
import { useKeepOption } from "../../data/option-set.ts";
import { useRoom, whyNot } from "../../room/room-context.ts";
import { newUuid } from "../../tools/new-uuid.ts";
import { NameForm } from "./NameForm.tsx";

export interface OfDraftProps {
  store: DraftStore;
  set: OptionSetNow;
  drawn: ReadonlyMap<string, Scheme>;
}

/** What the architect does with the draft: keeps it as the next alternative, or draws the one that was picked. */
export function OfDraft({ store, set, drawn }: OfDraftProps) {
  const { project } = useRoom();
  const draft = useDraft(store);
  const keep = useKeepOption(project.id, set.id);
  const place = set.options.length + 1;
  const full = whyFull(set.options);
  const asleepBecause =
    whyNot(project, "keep-options") ?? (keep.isPending ? "It is on its way." : whyNotKept(draft, set));
  return (
    <div className="option-of-draft">
      {full !== undefined ? (
        <p>{`${full.slice(0, 1).toUpperCase()}${full.slice(1)}.`}</p>
      ) : (
        <NameForm
          label="Name of the draft as it is now"
          command={`Keep the draft as alternative ${place}`}
          most={80}
          asleepBecause={asleepBecause}
          error={keep.error}
          onName={(name, done) => {
            const { number: draftNumber, contentDigest } = draft;
            keep.mutate({ id: newUuid(), name, draftNumber, contentDigest }, { onSuccess: done });
          }}
        />
      )}
      <DrawPicked {...{ store, draft, set, drawn }} />
    </div>
  );
}

/** Makes the draft what was picked, as one move that can be taken back. */
function DrawPicked({ store, draft, set, drawn }: OfDraftProps & { draft: DraftSnapshot }) {
  const { project } = useRoom();
  const [refused, setRefused] = useState(false);
  const pick = pickedOf(set);
  const option = set.options.find(({ id }) => id === pick?.optionId);
  const scheme = pick === undefined ? undefined : drawn.get(pick.optionId);
  if (option === undefined || scheme === undefined) return null;
  if (option.contentDigest === draft.contentDigest && draft.pending.length === 0)
    return <p>The draft is alternative {option.place}.</p>;
  const operations = operationsBetween(draft.scheme, scheme);
  const tooMany = operations.length > mostOperations ? "It differs in more than one move holds." : undefined;
  return (
    <>
      <Command
        asleepBecause={whyNot(project, "draw") ?? tooMany}
        onPress={() => setRefused(operations.length > 0 && !store.draw(operations).ok)}
      >
        {`Make the draft alternative ${option.place}`}
      </Command>
      {refused ? (
        <p className="field-fault" role="alert">
          The draft would not take it. Look at it on sheet 1, and press again.
        </p>
      ) : null}
    </>
  );
}

function whyNotKept(draft: DraftSnapshot, { options }: OptionSetNow): string | undefined {
  if (draft.scheme.containers.length === 0) return "The sheet is empty. Set a container first.";
  if (draft.conflicts.length > 0) return "Settle first what two hands drew.";
  if (draft.pending.length > 0) return "The last moves are still on their way.";
  const same = options.find((each) => each.withdrawn === null && each.contentDigest === draft.contentDigest);
  return same === undefined ? undefined : `The draft is alternative ${same.place} already.`;
}
