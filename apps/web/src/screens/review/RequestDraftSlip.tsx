import type { Revision } from "@cornerway/schema";
import { Command } from "../../controls/Command.tsx";
import { PersonField } from "../../controls/PersonField.tsx";
import { useMakeRequest } from "../../data/request.ts";
import { useRoom } from "../../room/room-context.ts";
import { Slip } from "../../sheet/Slip.tsx";
import { useUnits } from "../../units/use-units.ts";
import { SheetWallsForm } from "../../twin/SheetWallsForm.tsx";
import { actSentence } from "../../wording/act-sentence.ts";
import { namesIn } from "../../wording/name-of.ts";
import { BeforeAfter } from "./BeforeAfter.tsx";
import type { RequestDraft } from "./use-request-draft.ts";

/** A change request while it is drawn: what it adds, what it changes, and the engineer's own sentence. */
export function RequestDraftSlip({ revision, request }: { revision: Revision; request: RequestDraft }) {
  const { project, me, say } = useRoom();
  const units = useUnits();
  const make = useMakeRequest(project.id);
  const drawn = request.operations.length > 0;
  const send = () =>
    make.mutate(
      {
        id: request.id,
        revision: revision.letter,
        contentDigest: revision.contentDigest,
        text: request.text.trim(),
        operations: request.operations,
      },
      {
        onSuccess: () => {
          request.lay();
          say("The change request is with the architect.");
        },
      },
    );
  return (
    <Slip label="Change request, being drawn" author={me.name} hand="engineer">
      <p>
        {drawn
          ? `${actSentence(request.operations, [], namesIn(request.proposed, request.operations), units)}.`
          : "Take Post from the tray and press on the unit it is to hold. Nothing here changes the scheme."}
      </p>
      {drawn ? <BeforeAfter before={revision.result} scheme={request.proposed} /> : null}
      <details>
        <summary>Sheet walls in the lateral system</summary>
        <SheetWallsForm
          basis={request.proposed.basis}
          onBasis={(basis) => request.draw([{ kind: "basis.change", basis }])}
        />
      </details>
      <PersonField label="What is asked, in your own words" fault={make.isError ? make.error.message : undefined}>
        {(bound) => (
          <textarea
            {...bound}
            rows={3}
            maxLength={4000}
            value={request.text}
            onChange={(event) => request.setText(event.target.value)}
          />
        )}
      </PersonField>
      <div className="twin-row">
        <Command engineer onPress={send} asleepBecause={whyNotYet(drawn, request.text, make.isPending)}>
          Send the request to the architect
        </Command>
        <Command quiet onPress={request.takeBack} asleepBecause={drawn ? undefined : "Nothing is drawn yet."}>
          Take the last back
        </Command>
        <Command quiet onPress={request.lay}>
          Lay it aside
        </Command>
      </div>
    </Slip>
  );
}

function whyNotYet(drawn: boolean, text: string, onItsWay: boolean): string | undefined {
  if (onItsWay) return "It is on its way.";
  if (!drawn) return "Nothing is drawn yet.";
  return text.trim() === "" ? "Say in a sentence what is asked." : undefined;
}
