import { newUuid } from "../../tools/new-uuid.ts";
import type { ChangeRequest, Revision } from "@cornerway/schema";
import { applyOperations } from "@cornerway/schema";
import { useMemo, useState } from "react";
import { Command } from "../../controls/Command.tsx";
import { PersonField } from "../../controls/PersonField.tsx";
import { dayAndTimeOf } from "../../controls/calendar.ts";
import { useAnswerRequest } from "../../data/request.ts";
import { RequestPrice } from "../../prices/RequestPrice.tsx";
import { useRoom, whyNot } from "../../room/room-context.ts";
import { Slip } from "../../sheet/Slip.tsx";
import { BeforeAfter } from "./BeforeAfter.tsx";
import { TakeIn } from "./TakeIn.tsx";

/** An open change request: the engineer's sentence, before and after, and two answers. */
export function RequestSlip({ request, revision }: { request: ChangeRequest; revision: Revision }) {
  const { project, draft } = useRoom();
  const answer = useAnswerRequest(project.id);
  const [declining, setDeclining] = useState(false);
  const [reason, setReason] = useState("");
  const why = whyNot(project, "answer-request");
  const proposed = useMemo(() => {
    const applied = applyOperations(revision.scheme, request.operations);
    return applied.ok ? applied.scheme : revision.scheme;
  }, [revision.scheme, request.operations]);
  const decline = () => answer.mutate({ requestId: request.id, answer: { answer: "decline", reason: reason.trim() } });
  return (
    <Slip
      label={`Change request ${request.number}`}
      author={`${request.author.name}, ${dayAndTimeOf(request.madeAt)}`}
      hand="engineer"
    >
      <p className="said-by-person hand-engineer">{request.text}</p>
      <RequestPrice request={request} />
      <BeforeAfter before={revision.result} scheme={proposed} />
      <div className="twin-row">
        {draft === null || why !== undefined ? (
          <Command next onPress={() => undefined} asleepBecause={why ?? "Only the architect answers a change request."}>
            Take it in
          </Command>
        ) : (
          <TakeIn
            request={request}
            store={draft}
            busy={answer.isPending}
            onTake={(base) =>
              answer.mutate({ requestId: request.id, answer: { answer: "take in", actId: newUuid(), base } })
            }
          />
        )}
        <Command onPress={() => setDeclining(!declining)} asleepBecause={why}>
          Decline, with a reason
        </Command>
      </div>
      {declining ? (
        <>
          <PersonField label="Why not">
            {(bound) => (
              <textarea
                {...bound}
                rows={2}
                maxLength={2000}
                value={reason}
                onChange={(event) => setReason(event.target.value)}
              />
            )}
          </PersonField>
          <Command onPress={decline} asleepBecause={reason.trim() === "" ? "Say why it is declined." : undefined}>
            Decline it so
          </Command>
        </>
      ) : null}
      {answer.isError ? (
        <p className="field-fault" role="alert">
          {answer.error.message}
        </p>
      ) : null}
    </Slip>
  );
}
