import { useQueryClient } from "@tanstack/react-query";
import { useState } from "react";
import { Command } from "../../controls/Command.tsx";
import { changePerson } from "../../data/change-person.ts";
import { forgetKept, unsentOf } from "../../data/draft/page-keep.ts";
import { signOut, useSession } from "../../data/session.ts";
import { Slip } from "../../sheet/Slip.tsx";

/** Leaves the desk. Moves that only this browser holds are asked about first; nothing of this person stays behind. */
export function SignOut() {
  const client = useQueryClient();
  const personId = useSession().data?.person.id ?? null;
  const [unsent, setUnsent] = useState(0);
  const [trouble, setTrouble] = useState<string | null>(null);
  const leave = async () => {
    await signOut();
    if (personId !== null) await forgetKept(personId);
    changePerson(client, null);
  };
  const ask = async () => {
    const waiting = personId === null ? 0 : await unsentOf(personId);
    if (waiting === 0) return leave();
    setUnsent(waiting);
  };
  const tryTo = (act: () => Promise<void>) => {
    setTrouble(null);
    act().catch((error: unknown) => setTrouble(error instanceof Error ? error.message : String(error)));
  };
  if (unsent === 0)
    return (
      <>
        <Command quiet onPress={() => tryTo(ask)}>
          Leave the desk
        </Command>
        {trouble === null ? null : <Fault why={trouble} />}
      </>
    );
  return (
    <Slip label="Not sent yet">
      <p>
        {unsent === 1 ? "One move waits" : `${unsent} moves wait`} in this browser for the line and{" "}
        {unsent === 1 ? "is" : "are"} nowhere else. Leaving the desk takes {unsent === 1 ? "it" : "them"} away.
      </p>
      <div className="twin-row">
        <Command next onPress={() => setUnsent(0)}>
          Stay
        </Command>
        <Command onPress={() => tryTo(leave)}>{unsent === 1 ? "Leave, and lose it" : "Leave, and lose them"}</Command>
      </div>
      {trouble === null ? null : <Fault why={trouble} />}
    </Slip>
  );
}

const Fault = ({ why }: { why: string }) => (
  <p className="field-fault" role="alert">
    {why}
  </p>
);
