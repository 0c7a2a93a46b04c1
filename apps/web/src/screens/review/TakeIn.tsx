import type { ChangeRequest } from "@cornerway/schema";
import { Command } from "../../controls/Command.tsx";
import type { DraftStore } from "../../data/draft/draft-store.ts";
import { useDraft } from "../../data/draft/use-draft.ts";
import { useRequestPreview } from "../../data/request.ts";
import { useRoom } from "../../room/room-context.ts";
import { useKeys } from "../../keys/use-keys.ts";
import { listOf } from "../../wording/list-of.ts";
import { namesIn } from "../../wording/name-of.ts";

export interface TakeInProps {
  request: ChangeRequest;
  store: DraftStore;
  busy: boolean;
  onTake: (base: number) => void;
}

/** Takes a request into the draft as it stands; sleeps, with why, when the draft cannot take it. */
export function TakeIn({ request, store, busy, onTake }: TakeInProps) {
  const { project } = useRoom();
  const draft = useDraft(store);
  const preview = useRequestPreview(project.id, request.id, draft.number);
  const nameOf = namesIn(draft.scheme, request.operations);
  const why = busy
    ? "It is on its way."
    : draft.pending.length > 0
      ? "The last moves are still on their way."
      : preview.data === undefined
        ? "It is tried on the draft first."
        : preview.data.refusal !== null
          ? `The draft cannot take it: ${preview.data.refusal}`
          : undefined;
  const take = () => onTake(draft.number);
  useKeys({ a: () => why === undefined && take() });
  const changed = preview.data?.changed ?? [];
  return (
    <>
      <Command next shortcut="A" onPress={take} asleepBecause={why}>
        Take it in
      </Command>
      {changed.length === 0 ? null : (
        <p className="field-fault">{listOf(changed.map(nameOf))} changed in the draft since this was asked.</p>
      )}
    </>
  );
}
