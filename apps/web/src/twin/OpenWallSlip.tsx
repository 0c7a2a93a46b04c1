import type { Container, Face, Operation, Scheme } from "@cornerway/schema";
import { useState } from "react";
import { Command } from "../controls/Command.tsx";
import { PersonField } from "../controls/PersonField.tsx";
import { Slip } from "../sheet/Slip.tsx";
import { openWall, wallAgainst, walls } from "../tools/open-wall.ts";

export interface OpenWallSlipProps {
  scheme: Scheme;
  unit: Container;
  onDraw: (operations: Operation[]) => void;
}

/** The typed twin of opening a wall: which one, and whether the wall against it goes too. */
export function OpenWallSlip({ scheme, unit, onDraw }: OpenWallSlipProps) {
  const [face, setFace] = useState<Face>("right");
  const against = wallAgainst(scheme, unit, face);
  return (
    <Slip label={`Open a wall of ${unit.tag}`}>
      <PersonField label="Wall">
        {(bound) => (
          <select
            {...bound}
            value={face}
            onChange={({ target }) => setFace(walls.find((wall) => wall === target.value) ?? face)}
          >
            {walls.map((wall) => (
              <option key={wall}>{wall}</option>
            ))}
          </select>
        )}
      </PersonField>
      {against === null ? null : <p>The wall of {against.unit.tag} stands against it and goes too.</p>}
      <Command onPress={() => onDraw(openWall(scheme, unit, face))}>{`Take the ${face} wall out`}</Command>
    </Slip>
  );
}
