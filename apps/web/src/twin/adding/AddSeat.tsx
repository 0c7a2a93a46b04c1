import type { Container, Operation, Scheme } from "@cornerway/schema";
import { useState } from "react";
import { Command } from "../../controls/Command.tsx";
import { PersonField } from "../../controls/PersonField.tsx";
import { bareBearings, newSeat } from "../../tools/new-seat.ts";
import { drawnLength } from "../../units/drawn-length.ts";
import { useUnits } from "../../units/use-units.ts";
import { namesIn } from "../../wording/name-of.ts";

export interface AddToUnitProps {
  scheme: Scheme;
  unit: Container;
  onDraw: (operations: Operation[]) => void;
}

/** Seats where a unit's rails and corners cross what is below: at one crossing, or at all of them. */
export default function AddSeat({ scheme, unit, onDraw }: AddToUnitProps) {
  const units = useUnits();
  const nameOf = namesIn(scheme);
  const places = bareBearings(scheme, unit.id);
  const [at, setAt] = useState(0);
  const chosen = places[at] ?? places[0];
  if (chosen === undefined)
    return <p>{`${unit.tag} crosses nothing below away from the corners, or every crossing has its seat.`}</p>;
  const all = () => {
    let now = scheme;
    return places.map((place): Operation => {
      const seat = newSeat(now, place);
      now = { ...now, seats: [...now.seats, seat] };
      return { kind: "seat.set", seat };
    });
  };
  return (
    <>
      <PersonField label="Crossing">
        {(bound) => (
          <select {...bound} value={places.indexOf(chosen)} onChange={({ target }) => setAt(Number(target.value))}>
            {places.map((place, index) => (
              <option key={`${place.lowerId} ${place.at.xMm} ${place.at.yMm}`} value={index}>
                {`on ${nameOf(place.lowerId)}, ${drawnLength(place.at.xMm, units)} east, ${drawnLength(place.at.yMm, units)} north`}
              </option>
            ))}
          </select>
        )}
      </PersonField>
      <div className="twin-row">
        <Command next onPress={() => onDraw([{ kind: "seat.set", seat: newSeat(scheme, chosen) }])}>
          {`Set a seat on ${nameOf(chosen.lowerId)}`}
        </Command>
        {places.length > 1 ? (
          <Command onPress={() => onDraw(all())}>{`Set seats at all ${places.length}`}</Command>
        ) : null}
      </div>
    </>
  );
}
