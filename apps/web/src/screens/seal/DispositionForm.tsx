import type { KeptFile, Revision } from "@cornerway/schema";
import { useState } from "react";
import { PersonField } from "../../controls/PersonField.tsx";
import { Refused } from "../../controls/Refused.tsx";
import { useDisposeMark } from "../../data/seal.ts";
import { useRoom } from "../../room/room-context.ts";
import { newUuid } from "../../tools/new-uuid.ts";
import { FileForm } from "./FileForm.tsx";

/** The engineer's own word on one mark: a reason, and a calculation of theirs. */
export function DispositionForm({ revision, markId }: { revision: Revision; markId: string }) {
  const { project, say } = useRoom();
  const dispose = useDisposeMark(project.id);
  const [reason, setReason] = useState("");
  const { letter, contentDigest, resultDigest } = revision;
  const dispatch = ({ id: fileId, digest }: KeptFile) => {
    if (resultDigest === null) return;
    const bound = { revision: letter, contentDigest, resultDigest };
    dispose.mutate(
      { id: newUuid(), ...bound, markId, reason: reason.trim(), calculation: { fileId, digest } },
      { onSuccess: () => say("The disposition stands beside the mark.") },
    );
  };
  return (
    <div className="matter-acts">
      <PersonField label="Why it does not stand in the way">
        {(bound) => (
          <textarea
            {...bound}
            rows={3}
            maxLength={4000}
            value={reason}
            onChange={({ target }) => setReason(target.value)}
          />
        )}
      </PersonField>
      <FileForm
        label="Your calculation, PDF"
        command="Put the disposition on this mark"
        asleepBecause={reason.trim() === "" ? "Say why first." : undefined}
        onKept={dispatch}
      />
      <Refused error={dispose.error} />
    </div>
  );
}
