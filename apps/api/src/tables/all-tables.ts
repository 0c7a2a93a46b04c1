import { cautions, type RevisionTable } from "@cornerway/schema";
import { csvOf } from "../description/csv.ts";
import { checksTable } from "./checks-table.ts";
import { connectionsTable } from "./connections-table.ts";
import { cutPlanTable } from "./cut-plan-table.ts";
import { deferredTable } from "./deferred-table.ts";
import { inspectionsTable } from "./inspections-table.ts";
import { loadsTable } from "./loads-table.ts";
import { membersTable } from "./members-table.ts";
import { openingsTable } from "./openings-table.ts";
import { reactionsTable } from "./reactions-table.ts";
import { submittalsTable } from "./submittals-table.ts";
import { surveyTable } from "./survey-table.ts";
import type { Table, TableSource } from "./table.ts";
import { unitsTable } from "./units-table.ts";

const tables: Record<RevisionTable, (source: TableSource) => Table> = {
  units: unitsTable,
  openings: openingsTable,
  "cut-plan": cutPlanTable,
  members: membersTable,
  loads: loadsTable,
  checks: checksTable,
  reactions: reactionsTable,
  connections: connectionsTable,
  survey: surveyTable,
  inspections: inspectionsTable,
  deferred: deferredTable,
  submittals: submittalsTable,
};

/** The table as a file, with the revision it is of and the cautions after its last row. */
export function tableFile(name: RevisionTable, source: TableSource): string {
  const { head, rows } = tables[name](source);
  const alone = (words: string) => head.map((_, at) => (at === 0 ? words : null));
  const of = `Revision ${source.letter}, content ${source.contentDigest}, engine ${source.assessment.engineVersion}: ${source.assessment.scope}.`;
  return csvOf(head, [...rows, ...[of, ...cautions].map(alone)]);
}
