import type { CatalogRow, CatalogValue } from "./catalog-value.ts";
import { containerTypeRows } from "./container-types.ts";
import { gravity } from "./gravity.ts";
import { jointTolerances } from "./joint-tolerances.ts";
import { sectionRows, type SectionRow } from "./sections/section-rows.ts";
import { wallRules } from "./wall-rules.ts";

const rowsOf = (key: string, values: Readonly<Record<string, CatalogValue>>): CatalogRow[] =>
  Object.entries(values).map(([property, value]) => ({ key, property, ...value }));

/** Every value the engine judges by, as plain rows; digested together with the scheme. Sections carry units in their names. */
export const catalogRows: readonly (CatalogRow | SectionRow)[] = [
  ...Object.entries(containerTypeRows).flatMap(([type, row]) => rowsOf(type, row)),
  ...rowsOf("joint", jointTolerances),
  ...rowsOf("wall", wallRules),
  ...rowsOf("site", { gravity }),
  ...sectionRows,
];
