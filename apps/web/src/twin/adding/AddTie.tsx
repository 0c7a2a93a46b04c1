import { useState } from "react";
import { Command } from "../../controls/Command.tsx";
import { neighboursOf, newTie, tieHeights, tiePlaces, type TieHeight, type TiePlace } from "../../tools/new-tie.ts";
import { namesIn } from "../../wording/name-of.ts";
import type { AddToUnitProps } from "./AddSeat.tsx";
import { ChoiceField } from "./ChoiceField.tsx";

/** A tie to a unit that stands beside this one. */
export default function AddTie({ scheme, unit, onDraw }: AddToUnitProps) {
  const nameOf = namesIn(scheme);
  const neighbours = neighboursOf(scheme, unit);
  const [to, setTo] = useState<string | null>(null);
  const [place, setPlace] = useState<TiePlace>("middle");
  const [height, setHeight] = useState<TieHeight>("at the top rails");
  const chosen = neighbours.find(({ id }) => id === to) ?? neighbours[0];
  if (chosen === undefined) return <p>{`No unit stands beside ${unit.tag}, wall to wall within 150 mm.`}</p>;
  return (
    <>
      <div className="part-fields">
        <div className="part-half">
          <ChoiceField
            label="Neighbour"
            value={chosen.id}
            options={neighbours.map(({ id }) => [id, nameOf(id)] as const)}
            onChange={setTo}
          />
        </div>
        <div className="part-half">
          <ChoiceField label="Along the joint" value={place} options={tiePlaces} onChange={setPlace} />
        </div>
        <div className="part-half">
          <ChoiceField label="Height" value={height} options={tieHeights} onChange={setHeight} />
        </div>
      </div>
      <Command
        next
        onPress={() => onDraw([{ kind: "tie.set", tie: newTie(scheme, unit, chosen, place, height) }])}
      >{`Tie ${unit.tag} to ${nameOf(chosen.id)}`}</Command>
    </>
  );
}
