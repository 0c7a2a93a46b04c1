import type { OptionNow } from "@cornerway/schema";
import { useWithdrawOption } from "../../data/option-set.ts";
import { useRoom, whyNot } from "../../room/room-context.ts";
import { newUuid } from "../../tools/new-uuid.ts";
import { OptionWordForm } from "./OptionWordForm.tsx";

/** Takes an alternative back; offered to whoever kept it and to nobody else. */
export function WithdrawForm({ setId, option }: { setId: string; option: OptionNow }) {
  const { project, me } = useRoom();
  const withdraw = useWithdrawOption(project.id, setId, option.id);
  if (option.author.id !== me.id || whyNot(project, "keep-options") !== undefined) return null;
  return (
    <OptionWordForm
      quiet
      words={`Withdraw alternative ${option.place}`}
      asleepBecause={withdraw.isPending ? "It is on its way." : undefined}
      error={withdraw.error}
      onSaid={(reason) => withdraw.mutate({ id: newUuid(), reason })}
    />
  );
}
