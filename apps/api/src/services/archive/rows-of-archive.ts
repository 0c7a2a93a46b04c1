import type { RecordBundle } from "@cornerway/schema";
import { z } from "zod";
import { jsonOf, type WholeArchive } from "../../archive/project-archive.ts";
import { Row, type ProjectTable } from "../../store/project-tables.ts";

const tableOf = (name: string): string | undefined => /^rows\/(\w+)\.json$/.exec(name)?.[1];
const NamedFile = z.strictObject({ file: z.string() });

export type ArchivedRows = { ok: true; rows: Map<string, Row[]> } | { ok: false; fault: string };

/**
 * The rows of an archive by table, with their bytes as PostgreSQL reads them. Refused where a row is of another project,
 * where this version has no such table or column, and where a row says other than the record.
 */
export function rowsOfArchive(
  { files, manifest, bundle }: WholeArchive,
  tables: readonly ProjectTable[],
): ArchivedRows {
  const rows = new Map<string, Row[]>();
  for (const [name, bytes] of files) {
    const table = tableOf(name);
    if (table === undefined) continue;
    const known = tables.find((each) => each.name === table);
    if (known === undefined) return { ok: false, fault: `${name}: this version has no such table` };
    const read = z.array(Row).safeParse(jsonOf(bytes));
    if (!read.success) return { ok: false, fault: `${name}: is not a list of rows` };
    const fault = rowFault(read.data, known, manifest.project.id) ?? recordFault(table, read.data, bundle);
    if (fault !== undefined) return { ok: false, fault: `${name}: ${fault}` };
    rows.set(
      table,
      read.data.map((row) => withBytes(row, known, files)),
    );
  }
  return { ok: true, rows };
}

function rowFault(rows: readonly Row[], { columns }: ProjectTable, projectId: string): string | undefined {
  if (rows.some((row) => row["project_id"] !== projectId)) return "holds a row of another project";
  const unknown = rows.flatMap((row) => Object.keys(row)).find((column) => !columns.includes(column));
  return unknown === undefined ? undefined : `this version has no column ${unknown}`;
}

/** `\x…` is how PostgreSQL reads bytes from text. */
const withBytes = (row: Row, { bytes }: ProjectTable, files: WholeArchive["files"]): Row => ({
  ...row,
  ...Object.fromEntries(
    bytes.flatMap((column) => {
      const named = NamedFile.safeParse(row[column]);
      const found = named.success ? files.get(named.data.file) : undefined;
      return found === undefined ? [] : [[column, `\\x${Buffer.from(found).toString("hex")}`]];
    }),
  ),
});

/** Which column of a table is stated by which kind of entry, and where in it. */
const stated: Record<string, { column: string; kind: string; at: (payload: Row) => unknown }> = {
  revision: { column: "content_digest", kind: "revision sent", at: ({ contentDigest }) => contentDigest },
  assessment: { column: "result_digest", kind: "assessed", at: ({ resultDigest }) => resultDigest },
  kept_file: { column: "digest", kind: "file kept", at: ({ file }) => Row.safeParse(file).data?.["digest"] },
};

function recordFault(table: string, rows: readonly Row[], { entries }: RecordBundle): string | undefined {
  const rule = stated[table];
  if (rule === undefined) return undefined;
  const told = entries.flatMap((entry) =>
    "leaf" in entry || entry.opened === null || entry.kind !== rule.kind ? [] : [rule.at(entry.opened.payload)],
  );
  const apart = rows.find((row) => row[rule.column] !== null && !told.includes(row[rule.column]));
  return apart === undefined ? undefined : `${rule.column} ${String(apart[rule.column])} is not in the record`;
}
