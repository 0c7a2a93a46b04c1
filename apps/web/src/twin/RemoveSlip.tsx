import type { Scheme } from "@cornerway/schema";
import { Command } from "../controls/Command.tsx";
import { Slip } from "../sheet/Slip.tsx";
import { askedAbout } from "../tools/remove-elements.ts";
import { capitalised } from "../wording/capitalised.ts";
import { stoodOnSentence } from "../wording/impact-sentence.ts";
import { kindOf } from "../wording/kind-of.ts";
import { listOf } from "../wording/list-of.ts";
import { namesIn } from "../wording/name-of.ts";

export interface RemoveSlipProps {
  scheme: Scheme;
  ids: readonly string[];
  /** What stands on them and would stay. */
  standing: readonly string[];
  /** What taking them away would undo beside. */
  undoes: string | null;
  onRemove: () => void;
  onKeep: () => void;
}

/** Asks before a thing goes on which another hangs or stands, and names all of it. */
export function RemoveSlip({ scheme, ids, standing, undoes, onRemove, onKeep }: RemoveSlipProps) {
  const nameOf = namesIn(scheme);
  const them = ids.length === 1 ? "it" : "them";
  const name = ids.length > 3 ? `these ${ids.length}` : listOf(ids.map(nameOf));
  const hanging = askedAbout(scheme, ids)
    .map((id) => kindOf(scheme, id, nameOf))
    .toSorted((a, b) => a.localeCompare(b, "en", { numeric: true }));
  const stands = stoodOnSentence(standing, them, nameOf);
  return (
    <Slip label={`Take ${name} away?`}>
      <div role="alert" className="twin">
        {hanging.length === 0 ? null : (
          <p>
            {`${capitalised(listOf(hanging))} ${hanging.length === 1 ? "hangs" : "hang"} on ${them} and would go too. One step back brings all of it back.`}
          </p>
        )}
        {stands === null ? null : <p>{stands}</p>}
        {undoes === null ? null : <p>{undoes}</p>}
      </div>
      <div className="twin-row">
        <Command next shortcut="Del" onPress={onRemove}>
          {hanging.length === 0 ? `Take ${name} away all the same` : `Take ${name} and what hangs on ${them} away`}
        </Command>
        <Command quiet shortcut="Esc" onPress={onKeep}>
          {hanging.length === 0 ? `Keep ${name}` : "Keep all"}
        </Command>
      </div>
    </Slip>
  );
}
