import type { Container } from "@cornerway/schema";
import type { CatalogValue } from "../catalog/catalog-value.ts";
import { containerTypeRows } from "../catalog/container-types.ts";
import type { DeadState } from "./dead-state.ts";
import type { LoadingInputs } from "./loading-inputs.ts";

/** Tare of a container, kg: its plate's where that was read, else the end of the type's range that is worse. */
export function tareOf({ id, type }: Container, { plates }: LoadingInputs, state: DeadState): CatalogValue {
  const plate = plates.find(({ containerId }) => containerId === id);
  const rows = containerTypeRows[type];
  if (plate === undefined) return state === "most" ? rows.tareMost : rows.tareLeast;
  return {
    value: plate.tareKg,
    unit: "kg",
    source: "plate of this container, as entered",
    certainty: "common practice",
  };
}
