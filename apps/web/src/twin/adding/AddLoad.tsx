import { FreeLoad } from "@cornerway/schema";
import { useMemo, useState } from "react";
import { newFreeLoad } from "../../tools/new-free-load.ts";
import { freeLoadFields } from "../fields/load-fields.ts";
import { PartForm } from "../part/PartForm.tsx";
import type { AddToUnitProps } from "./AddSeat.tsx";
import { ChoiceField } from "./ChoiceField.tsx";

const shapes = [
  ["point", "at a point"],
  ["line", "along a line"],
  ["area", "over an area"],
] as const;

/** A load put where someone says, on the floor or roof of a unit. */
export default function AddLoad({ scheme, unit, onDraw }: AddToUnitProps) {
  const [shape, setShape] = useState<FreeLoad["shape"]>("point");
  const load = useMemo(() => newFreeLoad(scheme, unit, shape), [scheme, unit, shape]);
  return (
    <>
      <ChoiceField label="Load" value={shape} options={shapes} onChange={setShape} />
      <PartForm
        key={shape}
        element={load}
        schema={FreeLoad}
        fields={freeLoadFields(shape)}
        command={`Put it on ${unit.tag}`}
        onElement={(next) => onDraw([{ kind: "free-load.put", load: next }])}
      />
    </>
  );
}
