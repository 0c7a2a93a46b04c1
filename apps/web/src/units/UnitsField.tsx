import { unitSystems, type UnitSystem } from "@cornerway/schema";
import { PersonField } from "../controls/PersonField.tsx";
import { unitsSetting } from "./units-setting.ts";
import { useUnits } from "./use-units.ts";

const spoken: Record<UnitSystem, string> = {
  SI: "Metres and kilonewtons",
  US: "Feet and inches, kip, psf, lb",
};

/** The units one reads in; every number of every sheet follows at once. */
export function UnitsField() {
  const units = useUnits();
  return (
    <PersonField label="Units">
      {(bound) => (
        <select
          {...bound}
          value={units}
          onChange={({ target }) => {
            const chosen = unitSystems.find((known) => known === target.value);
            if (chosen !== undefined) unitsSetting.choose(chosen);
          }}
        >
          {unitSystems.map((system) => (
            <option key={system} value={system}>
              {spoken[system]}
            </option>
          ))}
        </select>
      )}
    </PersonField>
  );
}
