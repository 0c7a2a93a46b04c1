import type { Cell } from "../description/csv.ts";
import { to, type Table, type TableSource } from "./table.ts";

/** Loads as drawn on the scheme, then those worked out from the place and the adopted edition. */
export const loadsTable = ({ scheme, proof }: TableSource): Table => ({
  head: ["load_id", "unit_id", "surface", "case", "pressure_Pa", "symbol", "value", "unit", "clause", "certainty"],
  rows: [
    ...scheme.loads.map((load): Cell[] => [
      ...[load.id, load.containerId, load.surface, load.case, load.pressurePa, null, null, null, "as drawn", null],
    ]),
    ...(proof?.report.loads ?? []).map((load): Cell[] => [
      ...[load.id, null, null, load.group, null, load.symbol, to(load.value, 6), load.unit],
      ...[`${load.clause.document} ${load.clause.edition} ${load.clause.place}`, load.certainty],
    ]),
  ],
});
