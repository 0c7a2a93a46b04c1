import { containerTypes } from "@cornerway/schema";
import type { ContainerType } from "@cornerway/schema";
import { PersonField } from "../controls/PersonField.tsx";
import { containerName } from "../wording/container-name.ts";

/** The size of a unit, of those of ISO 668. */
export function SizeField({ type, onChange }: { type: ContainerType; onChange: (type: ContainerType) => void }) {
  return (
    <PersonField label="Size">
      {(bound) => (
        <select
          {...bound}
          value={type}
          onChange={({ target }) => {
            const chosen = containerTypes.find((known) => known === target.value);
            if (chosen !== undefined) onChange(chosen);
          }}
        >
          {containerTypes.map((known) => (
            <option key={known} value={known}>
              {containerName[known]}
            </option>
          ))}
        </select>
      )}
    </PersonField>
  );
}
