import type { Container } from "@cornerway/schema";
import { useMemo } from "react";
import { Command } from "../controls/Command.tsx";
import { Slip } from "../sheet/Slip.tsx";
import { QuantityForm } from "./QuantityForm.tsx";
import type { QuantityField } from "./quantity-field.ts";
import { SizeField } from "./SizeField.tsx";

/** The unit in hand, in numbers: the typed twin of setting it with the pointer. */
export function NewUnitSlip({
  unit,
  onChange,
  onSet,
}: {
  unit: Container;
  onChange: (unit: Container) => void;
  onSet: () => void;
}) {
  const { xUm, yUm, zUm, turnMdeg } = unit;
  const fields = useMemo<QuantityField[]>(
    () => [
      { name: "xUm", label: "Centre, east", kind: "length", value: xUm },
      { name: "yUm", label: "Centre, north", kind: "length", value: yUm },
      { name: "zUm", label: "Level", kind: "length", value: zUm },
      { name: "turnMdeg", label: "Turn", kind: "angle", value: turnMdeg },
    ],
    [xUm, yUm, zUm, turnMdeg],
  );
  return (
    <Slip label={`${unit.tag}, in hand`}>
      <SizeField type={unit.type} onChange={(type) => onChange({ ...unit, type })} />
      <QuantityForm
        fields={fields}
        command="Hold it there"
        onValues={(values) =>
          onChange({
            ...unit,
            xUm: values["xUm"] ?? xUm,
            yUm: values["yUm"] ?? yUm,
            zUm: values["zUm"] ?? zUm,
            turnMdeg: values["turnMdeg"] ?? turnMdeg,
          })
        }
      />
      <Command next shortcut="Enter" onPress={onSet}>
        {`Set ${unit.tag} here`}
      </Command>
    </Slip>
  );
}
