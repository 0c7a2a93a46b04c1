import { Override, type Operation, type Scheme } from "@cornerway/schema";
import { useMemo, useState } from "react";
import { Command } from "../../controls/Command.tsx";
import { newElementId } from "../../tools/new-element-id.ts";
import { overrideFields } from "../fields/unit-fields.ts";
import { PartForm } from "../part/PartForm.tsx";
import { ChoiceField } from "./ChoiceField.tsx";

interface AddFoundProps {
  scheme: Scheme;
  /** A unit, post or beam. */
  elementId: string;
  name: string;
  onDraw: (operations: Operation[]) => void;
}

const anew = "something else";

/** Steel as found or proved, with what it rests on, in place of what the catalogue assumes. */
export default function AddFound({ scheme, elementId, name, onDraw }: AddFoundProps) {
  const stated = scheme.overrides.filter((override) => override.elementId === elementId);
  const [chosenId, choose] = useState(stated[0]?.id ?? anew);
  const ofUnit = scheme.containers.some(({ id }) => id === elementId);
  const found = stated.find(({ id }) => id === chosenId);
  const blank = useMemo<Override>(
    () => ({
      id: newElementId("v"),
      elementId,
      ...(ofUnit ? { member: "corner post" as const } : {}),
      source: "",
    }),
    [elementId, ofUnit],
  );
  return (
    <>
      {stated.length === 0 ? null : (
        <ChoiceField
          label="Stated already"
          value={chosenId}
          options={[
            ...stated.map((each) => [each.id, `${each.member ?? name}: ${each.source}`] as const),
            [anew, anew] as const,
          ]}
          onChange={choose}
        />
      )}
      <PartForm
        key={chosenId}
        element={found ?? blank}
        schema={Override}
        fields={overrideFields(ofUnit)}
        command={`State this steel of ${name}`}
        onElement={(override) => onDraw([{ kind: found === undefined ? "override.set" : "override.change", override }])}
      />
      {found === undefined ? null : (
        <Command quiet onPress={() => onDraw([{ kind: "override.remove", id: found.id }])}>
          Go back to what is assumed
        </Command>
      )}
    </>
  );
}
