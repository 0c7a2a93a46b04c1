import { engineVersion } from "@cornerway/engine";
import { canonicalJson, recordKinds } from "@cornerway/schema";
import { makeArchive, recordName } from "../../archive/project-archive.ts";
import { done, refuse, type Outcome } from "../../outcome.ts";
import { makeBundle } from "../../record/make-bundle.ts";
import { signHead } from "../../record/sign-head.ts";
import type { Connection } from "../../store/connection.ts";
import type { Database } from "../../store/database.ts";
import { projectExists } from "../../store/new-project.ts";
import { readProjectRow } from "../../store/project-rows.ts";
import { readBytes, readProjectTables, readRows, type ProjectTable, type Row } from "../../store/project-tables.ts";
import { readBundleEntries } from "../../store/proved-entries.ts";
import { readHead } from "../../store/record-rows.ts";
import { signerFor } from "../prove-record.ts";

export const tableName = (table: string): string => `rows/${table}.json`;

/**
 * The whole project as one file: its record, every row with its bytes, and what states and signs them. Taken with the
 * project's row locked, so that no act falls between two tables. Who may is asked before.
 */
export async function takeArchive(
  database: Database,
  projectId: string,
  secretsKey: string | undefined,
): Promise<Outcome<{ bytes: Uint8Array; entries: number }>> {
  const signer = await signerFor(database.connection, secretsKey);
  if (!signer.ok) return signer;
  const { keys, key } = signer.value;
  const gathered = await database.act(projectId, async (tx) => {
    if (!(await projectExists(tx, projectId))) return refuse("not-found");
    const { last, openedAt, ...project } = await readProjectRow(tx, projectId);
    const { head } = await readHead(tx, projectId, last);
    const entries = await readBundleEntries(tx, projectId, { upTo: last, kinds: recordKinds });
    return done({
      project: { ...project, openedAt: openedAt.toISOString() },
      head,
      entries,
      files: await filesOf(tx, projectId),
    });
  });
  if (!gathered.ok) return gathered;
  const { project, head, entries, files } = gathered.value;
  const madeAt = new Date().toISOString();
  const number = entries.length;
  const bundle = makeBundle({ project: projectId, name: project.name, entries, head, time: madeAt }, keys, key);
  const stated = {
    ...{ archive: 1 as const, project, madeAt, engineVersion, keys: [...keys] },
    head: signHead({ project: projectId, number, head, time: madeAt }, key),
  };
  const all = new Map([[recordName, Buffer.from(bundle)], ...files]);
  return done({ bytes: await makeArchive(stated, all, key), entries: number });
}

/** A file for each table, and one for each column of bytes of each row, which the row then names. */
async function filesOf(tx: Connection, projectId: string): Promise<Map<string, Uint8Array>> {
  const files = new Map<string, Uint8Array>();
  for (const table of await readProjectTables(tx)) {
    const rows = await readRows(tx, table, projectId);
    const named: Row[] = [];
    for (const row of rows) named.push({ ...row, ...(await bytesOf(tx, table, row, files)) });
    files.set(tableName(table.name), Buffer.from(canonicalJson(named)));
  }
  return files;
}

async function bytesOf(tx: Connection, table: ProjectTable, row: Row, files: Map<string, Uint8Array>): Promise<Row> {
  const named: Row = {};
  for (const column of table.bytes) {
    const bytes = await readBytes(tx, table, { row, column });
    if (bytes === null) continue;
    const key = table.primaryKey.filter((each) => each !== "project_id").map((each) => String(row[each]));
    const file = `files/${table.name}/${key.join("-")}${endingOf(row, column)}`;
    files.set(file, bytes);
    named[column] = { file };
  }
  return named;
}

/** So that people can open the file without this service. */
const endingOf = (row: Row, column: string): string => {
  const type = column === "pdf" ? "application/pdf" : row["media_type"];
  return type === "application/pdf" ? ".pdf" : type === "image/jpeg" ? ".jpg" : type === "image/png" ? ".png" : "";
};
