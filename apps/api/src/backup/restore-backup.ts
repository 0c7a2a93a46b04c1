import { readFile } from "node:fs/promises";
import { pointerTo } from "@cornerway/schema";
import { unzipSync } from "fflate";
import type pg from "pg";
import { knownMigrations, migrate } from "../database/migrate.ts";
import { withClient } from "../database/with-client.ts";
import {
  BackupManifest,
  backupManifestName,
  backupSignatureFaults,
  newSha256,
  type BackupFile,
} from "./backup-manifest.ts";
import { isEmpty, readApplied, readWholeTables } from "./whole-tables.ts";

export type Restored = { ok: true; manifest: BackupManifest; applied: string[] } | { ok: false; faults: string[] };

export interface HowToRestore {
  /** The fingerprint of a key known from outside. */
  expected?: string | undefined;
  /** Takes a backup that is not signed. */
  unsigned: boolean;
}

/**
 * Fills an empty database from a backup. Everything is checked before anything is written; the tables are made as they were
 * when it was taken, filled in one transaction, and only then brought up to date. `ownerUrl` is the owner of the tables.
 */
export async function restoreBackup(ownerUrl: string, file: string, how: HowToRestore): Promise<Restored> {
  const read = readManifest(await readFile(file));
  if (!read.ok) return read;
  const { manifest, bytes } = read;
  const faults = [...backupSignatureFaults(manifest, how), ...fileFaults(manifest, bytes), ...versionFaults(manifest)];
  if (faults.length > 0) return { ok: false, faults };
  const held = await withClient(ownerUrl, (client) => placeFaults(client, manifest));
  if (held.length > 0) return { ok: false, faults: held };
  await migrate(ownerUrl, undefined, new Set(manifest.migrations));
  await withClient(ownerUrl, (client) => fill(client, manifest, bytes));
  return { ok: true, manifest, applied: await migrate(ownerUrl) };
}

function readManifest(
  bytes: Buffer,
): { ok: true; manifest: BackupManifest; bytes: Buffer } | { ok: false; faults: string[] } {
  let text: string;
  try {
    text = Buffer.from(unfold(bytes, backupManifestName)).toString("utf8");
  } catch (error) {
    const why = error instanceof Error ? error.message : String(error);
    return { ok: false, faults: [`it is not a whole backup: ${why}`] };
  }
  let value: unknown;
  try {
    value = JSON.parse(text);
  } catch {
    return { ok: false, faults: [`${backupManifestName}: is not JSON`] };
  }
  const parsed = BackupManifest.safeParse(value);
  if (parsed.success) return { ok: true, manifest: parsed.data, bytes };
  const faults = parsed.error.issues.map(
    ({ path, message }) => `${backupManifestName}: ${pointerTo(path)}: ${message}`,
  );
  return { ok: false, faults };
}

/** One file of the backup. Throws where it is not there, or the ZIP is not whole. */
function unfold(bytes: Buffer, name: string): Uint8Array {
  const found = unzipSync(bytes, { filter: (file) => file.name === name })[name];
  if (found === undefined) throw new Error(`${name} is not in it`);
  return found;
}

function fileFaults({ files }: BackupManifest, bytes: Buffer): string[] {
  return files.flatMap((file) => {
    try {
      const unfolded = unfold(bytes, file.name);
      const same = unfolded.byteLength === file.bytes && newSha256().update(unfolded).digest("hex") === file.digest;
      return same ? [] : [`${file.name}: is not the file that was stated`];
    } catch (error) {
      return [`${file.name}: ${error instanceof Error ? error.message : String(error)}`];
    }
  });
}

function versionFaults({ migrations }: BackupManifest): string[] {
  const known = new Set(knownMigrations());
  const unknown = migrations.filter((name) => !known.has(name));
  return unknown.length === 0 ? [] : [`it was made by a later version: ${unknown.join(", ")} is not known here`];
}

async function placeFaults(client: pg.ClientBase, { migrations }: BackupManifest): Promise<string[]> {
  if (!(await isEmpty(client))) return ["the database is not empty: there are people or projects in it"];
  const newer = (await readApplied(client)).filter((name) => !migrations.includes(name));
  return newer.length === 0
    ? []
    : ["the tables of the database are newer than the backup: give it a database without tables"];
}

/** Writes every row in one transaction, and counts them before it commits. */
async function fill(client: pg.ClientBase, { files }: BackupManifest, bytes: Buffer): Promise<void> {
  await client.query("begin");
  const byTable = new Map(files.map((file) => [file.table, file]));
  for (const { name } of await readWholeTables(client)) {
    const file = byTable.get(name);
    if (file !== undefined) await fillTable(client, file, Buffer.from(unfold(bytes, file.name)));
  }
  await client.query("commit");
}

const bytesAtOnce = 4 * 1024 * 1024;

async function fillTable(client: pg.ClientBase, { table, rows }: BackupFile, lines: Buffer): Promise<void> {
  for (let from = 0; from < lines.length;) {
    const to = Math.max(lines.lastIndexOf("\n", from + bytesAtOnce), lines.indexOf("\n", from)) + 1;
    const list = lines
      .subarray(from, to - 1)
      .toString("utf8")
      .split("\n")
      .join(",");
    await client.query(`insert into "${table}" select * from jsonb_populate_recordset(null::"${table}", $1::jsonb)`, [
      `[${list}]`,
    ]);
    from = to;
  }
  const counted = await client.query<{ rows: number }>(`select count(*)::int as "rows" from "${table}"`);
  if (counted.rows[0]?.rows !== rows) throw new Error(`${table}: ${counted.rows[0]?.rows} rows came in of ${rows}`);
}
