import { lockKinds, type FittingName, type Lock } from "@cornerway/schema";
import { useState } from "react";
import { Command } from "../../controls/Command.tsx";
import { bareFittings, newLock, newLocks } from "../../tools/new-lock.ts";
import type { AddToUnitProps } from "./AddSeat.tsx";
import { ChoiceField } from "./ChoiceField.tsx";

/** What joins a bottom fitting of a unit to what it stands on: a stock lock, a made connection, a hold-down. */
export default function AddLock({ scheme, unit, onDraw }: AddToUnitProps) {
  const bare = bareFittings(scheme, unit);
  const [at, setAt] = useState<FittingName | null>(null);
  const [wanted, setWanted] = useState<Lock["kind"] | null>(null);
  const chosen = bare.find(({ fitting }) => fitting === at) ?? bare[0];
  if (chosen === undefined) return <p>{`Every bottom fitting of ${unit.tag} is joined.`}</p>;
  const kind = wanted ?? chosen.kind;
  return (
    <>
      <div className="part-fields">
        <div className="part-half">
          <ChoiceField
            label="Fitting"
            value={chosen.fitting}
            options={bare.map(({ fitting }) => [fitting, fitting.replaceAll("-", " ")] as const)}
            onChange={setAt}
          />
        </div>
        <div className="part-half">
          <ChoiceField label="Joint" value={kind} options={lockKinds} onChange={setWanted} />
        </div>
      </div>
      <div className="twin-row">
        <Command
          next
          onPress={() => onDraw([{ kind: "lock.set", lock: newLock(scheme, unit, { ...chosen, kind }) }])}
        >{`Join it by ${kind === "lock" ? "a lock" : `a ${kind}`}`}</Command>
        {bare.length > 1 ? (
          <Command
            onPress={() => onDraw(newLocks(scheme, unit).map((lock) => ({ kind: "lock.set", lock })))}
          >{`Join all ${bare.length} corners`}</Command>
        ) : null}
      </div>
    </>
  );
}
