import { containerDimensions } from "@cornerway/engine";
import { faces } from "@cornerway/schema";
import type { Container, Face, Operation, Scheme } from "@cornerway/schema";
import { useMemo, useState } from "react";
import { PersonField } from "../controls/PersonField.tsx";
import { Slip } from "../sheet/Slip.tsx";
import { cutOpening } from "../tools/cut-opening.ts";
import { QuantityForm } from "./QuantityForm.tsx";
import type { QuantityField } from "./quantity-field.ts";

/** The typed twin of cutting: a wall of the chosen unit and the rectangle on it. */
export function NewOpeningSlip({
  scheme,
  unit,
  onDraw,
}: {
  scheme: Scheme;
  unit: Container;
  onDraw: (operations: Operation[]) => void;
}) {
  const [face, setFace] = useState<Face>("right");
  const fields = useMemo(() => proposedCut(unit, face), [unit, face]);
  return (
    <Slip label={`Cut in ${unit.tag}`}>
      <PersonField label="Wall">
        {(bound) => (
          <select
            {...bound}
            value={face}
            onChange={({ target }) => setFace(faces.find((known) => known === target.value) ?? face)}
          >
            {faces.map((known) => (
              <option key={known} value={known}>
                {known}
              </option>
            ))}
          </select>
        )}
      </PersonField>
      <QuantityForm
        key={face}
        fields={fields}
        command={`Cut it in ${unit.tag}`}
        onValues={(values) => {
          const from = { uMm: (values["along"] ?? 0) / 1000, vMm: (values["sill"] ?? 0) / 1000 };
          const to = { uMm: from.uMm + (values["width"] ?? 0) / 1000, vMm: from.vMm + (values["height"] ?? 0) / 1000 };
          const opening = cutOpening(scheme, unit, face, from, to, 0);
          if (opening !== null) onDraw([{ kind: "opening.cut", opening }]);
        }}
      />
    </Slip>
  );
}

/** A door-sized cut in the middle of the wall, to begin from. */
function proposedCut(unit: Container, face: Face): QuantityField[] {
  const { u0, u1, v0, v1 } = containerDimensions(unit.type).sheetZone(face);
  const widthMm = Math.min(1500, u1 - u0);
  const heightMm = Math.min(2100, v1 - v0);
  const mm = (name: string, label: string, valueMm: number): QuantityField => ({
    name,
    label,
    kind: "length",
    value: Math.round(valueMm * 1000),
  });
  return [
    mm("along", "Along", Math.round((u0 + u1 - widthMm) / 20) * 10),
    mm("sill", "Sill", v0),
    mm("width", "Width", widthMm),
    mm("height", "Height", heightMm),
  ];
}
