import type { Container } from "@cornerway/schema";
import type { CatalogValue } from "../catalog/catalog-value.ts";
import { containerTypeRows } from "../catalog/container-types.ts";
import type { DeadState } from "./dead-state.ts";

/** Tare of a container, kg: its plate's where that was read, else the end of the type's range that is worse. */
export function tareOf({ type, plateTareKg }: Container, state: DeadState): CatalogValue {
  const rows = containerTypeRows[type];
  if (plateTareKg === undefined) return state === "most" ? rows.tareMost : rows.tareLeast;
  return {
    value: plateTareKg,
    unit: "kg",
    source: "plate of this container, as entered",
    certainty: "common practice",
  };
}
