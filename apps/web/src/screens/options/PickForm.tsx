import type { OptionNow } from "@cornerway/schema";
import { usePickOption } from "../../data/option-set.ts";
import { useRoom, whyNot } from "../../room/room-context.ts";
import { newUuid } from "../../tools/new-uuid.ts";
import { OptionWordForm } from "./OptionWordForm.tsx";

/** Picks an alternative, on the very drawing that is shown. */
export function PickForm({ setId, option }: { setId: string; option: OptionNow }) {
  const { project } = useRoom();
  const pick = usePickOption(project.id, setId);
  const { id: optionId, contentDigest } = option;
  return (
    <OptionWordForm
      words={`Pick alternative ${option.place}`}
      asleepBecause={whyNot(project, "pick-option") ?? (pick.isPending ? "It is on its way." : undefined)}
      error={pick.error}
      onSaid={(reason) => pick.mutate({ id: newUuid(), optionId, contentDigest, reason })}
    />
  );
}
