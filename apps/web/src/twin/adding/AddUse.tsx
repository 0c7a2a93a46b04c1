import { FloorUse } from "@cornerway/schema";
import { useMemo, useState } from "react";
import { Command } from "../../controls/Command.tsx";
import { newElementId } from "../../tools/new-element-id.ts";
import { useField } from "../fields/unit-fields.ts";
import { PartForm } from "../part/PartForm.tsx";
import type { AddToUnitProps } from "./AddSeat.tsx";
import { ChoiceField } from "./ChoiceField.tsx";

/** What the floor or roof of a unit is used for; the code's imposed load follows from it. */
export default function AddUse({ scheme, unit, onDraw }: AddToUnitProps) {
  const [surface, setSurface] = useState<FloorUse["surface"]>("floor");
  const stated = scheme.uses.find((use) => use.containerId === unit.id && use.surface === surface);
  const use = useMemo<FloorUse>(
    () =>
      stated ?? {
        id: newElementId("y"),
        containerId: unit.id,
        surface,
        occupancy: surface === "roof" ? "roof" : "office",
      },
    [stated, unit.id, surface],
  );
  return (
    <>
      <ChoiceField label="Surface" value={surface} options={["floor", "roof"]} onChange={setSurface} />
      <PartForm
        key={use.id}
        element={use}
        schema={FloorUse}
        fields={[useField]}
        command={stated === undefined ? `State the use of the ${surface}` : `Change the use of the ${surface}`}
        onElement={(next) => onDraw([{ kind: stated === undefined ? "use.set" : "use.change", use: next }])}
      />
      {stated === undefined ? null : (
        <Command quiet onPress={() => onDraw([{ kind: "use.remove", id: stated.id }])}>
          {`Leave the use of the ${surface} open`}
        </Command>
      )}
    </>
  );
}
