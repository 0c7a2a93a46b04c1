import { cautions } from "@cornerway/schema";
import { csvOf } from "../description/csv.ts";
import { checksTable } from "./checks-table.ts";
import { connectionsTable } from "./connections-table.ts";
import { loadsTable } from "./loads-table.ts";
import { membersTable } from "./members-table.ts";
import { openingsTable } from "./openings-table.ts";
import { reactionsTable } from "./reactions-table.ts";
import type { Table, TableSource } from "./table.ts";
import { unitsTable } from "./units-table.ts";

/** Every table of a revision by its name; comments of the authority and prices have routes of their own. */
const tables = {
  units: unitsTable,
  openings: openingsTable,
  members: membersTable,
  loads: loadsTable,
  checks: checksTable,
  reactions: reactionsTable,
  connections: connectionsTable,
} as const satisfies Record<string, (source: TableSource) => Table>;

export const tableNames = ["units", "openings", "members", "loads", "checks", "reactions", "connections"] as const;
export type TableName = (typeof tableNames)[number];

/** The table as a file, with the revision it is of and the cautions after its last row. */
export function tableFile(name: TableName, source: TableSource): string {
  const { head, rows } = tables[name](source);
  const alone = (words: string) => head.map((_, at) => (at === 0 ? words : null));
  const of = `Revision ${source.letter}, content ${source.contentDigest}, engine ${source.assessment.engineVersion}: ${source.assessment.scope}.`;
  return csvOf(head, [...rows, ...[of, ...cautions].map(alone)]);
}
