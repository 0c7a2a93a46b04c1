import type { Scheme } from "@cornerway/schema";
import { Command } from "../controls/Command.tsx";
import { Slip } from "../sheet/Slip.tsx";
import { askedAbout } from "../tools/remove-elements.ts";
import { kindOf } from "../wording/kind-of.ts";
import { listOf } from "../wording/list-of.ts";
import { namesIn } from "../wording/name-of.ts";

export interface RemoveSlipProps {
  scheme: Scheme;
  ids: readonly string[];
  onRemove: () => void;
  onKeep: () => void;
}

/** Asks before what hangs on a thing goes with it, and names all of it. */
export function RemoveSlip({ scheme, ids, onRemove, onKeep }: RemoveSlipProps) {
  const nameOf = namesIn(scheme);
  const name = ids.length > 3 ? `these ${ids.length}` : listOf(ids.map(nameOf));
  const hanging = askedAbout(scheme, ids)
    .map((id) => kindOf(scheme, id, nameOf))
    .toSorted((a, b) => a.localeCompare(b, "en", { numeric: true }));
  return (
    <Slip label={`Take ${name} away?`}>
      <p role="alert">
        {`${capitalised(listOf(hanging))} ${hanging.length === 1 ? "hangs" : "hang"} on ${ids.length === 1 ? "it" : "them"} and would go too. One step back brings all of it back.`}
      </p>
      <div className="twin-row">
        <Command next shortcut="Del" onPress={onRemove}>
          {`Take ${name} and what hangs on ${ids.length === 1 ? "it" : "them"} away`}
        </Command>
        <Command quiet shortcut="Esc" onPress={onKeep}>
          Keep all
        </Command>
      </div>
    </Slip>
  );
}

const capitalised = (words: string): string => words.charAt(0).toUpperCase() + words.slice(1);
