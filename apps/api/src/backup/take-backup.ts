import { open, rename, rm, type FileHandle } from "node:fs/promises";
import { engineVersion } from "@cornerway/engine";
import { Zip, ZipDeflate } from "fflate";
import type pg from "pg";
import { withClient } from "../database/with-client.ts";
import { readSigner } from "../record/signing-key.ts";
import { openDatabase } from "../store/database.ts";
import {
  backupManifestName,
  manifestText,
  newSha256,
  signBackup,
  type BackupFile,
  type BackupManifest,
} from "./backup-manifest.ts";
import { readApplied, readWholeTables } from "./whole-tables.ts";

const rowsAtOnce = 500;

/**
 * Writes everything the service keeps into one file, as it stood at one moment, signed where there is a `secretsKey`. The
 * file appears under its name once it is whole. `ownerUrl` is the owner of the tables.
 */
export async function takeBackup(
  ownerUrl: string,
  file: string,
  secretsKey: string | undefined,
): Promise<BackupManifest> {
  const signer = secretsKey === undefined ? null : await signerOf(ownerUrl, secretsKey);
  const unfinished = `${file}.unfinished`;
  const handle = await open(unfinished, "wx", 0o600); // it holds hashes of passwords
  try {
    const manifest = await withClient(ownerUrl, async (client) => {
      await client.query("begin isolation level repeatable read read only");
      const { migrations, files, zip } = await writeTables(client, handle);
      const madeAt = new Date().toISOString();
      const signed = signBackup({ backup: 1, madeAt, engineVersion, migrations, files }, signer);
      await zip.add(backupManifestName, [Buffer.from(manifestText(signed))]);
      await zip.end();
      await client.query("rollback");
      return signed;
    });
    await handle.sync();
    await handle.close();
    await rename(unfinished, file);
    return manifest;
  } catch (error) {
    await handle.close().catch(() => undefined); // closed already, or the disk is gone: what is thrown below says why
    await rm(unfinished, { force: true });
    throw error;
  }
}

async function signerOf(ownerUrl: string, secretsKey: string) {
  const database = openDatabase(ownerUrl);
  try {
    return await readSigner(database.connection, secretsKey);
  } finally {
    await database.close();
  }
}

async function writeTables(client: pg.ClientBase, handle: FileHandle) {
  const zip = zipInto(handle);
  const files: BackupFile[] = [];
  for (const { name: table, key } of await readWholeTables(client)) {
    const name = `rows/${table}.ndjson`;
    const counted = { rows: 0, bytes: 0, hash: newSha256() };
    await zip.add(name, linesOf(client, { table, key }, counted));
    files.push({ name, table, rows: counted.rows, bytes: counted.bytes, digest: counted.hash.digest("hex") });
  }
  return { migrations: await readApplied(client), files, zip };
}

/** The rows of a table as lines of JSON, some at a time, each counted as it goes by. */
async function* linesOf(
  client: pg.ClientBase,
  { table, key }: { table: string; key: readonly string[] },
  counted: { rows: number; bytes: number; hash: ReturnType<typeof newSha256> },
): AsyncGenerator<Buffer> {
  const order = key.map((column) => `"${column}"`).join(", ");
  await client.query(
    `declare "lines" cursor for select to_jsonb(t)::text as "line" from "${table}" t order by ${order}`,
  );
  for (;;) {
    const { rows } = await client.query<{ line: string }>(`fetch ${rowsAtOnce} from "lines"`);
    if (rows.length === 0) break;
    const bytes = Buffer.from(rows.map(({ line }) => `${line}\n`).join(""));
    counted.rows += rows.length;
    counted.bytes += bytes.byteLength;
    counted.hash.update(bytes);
    yield bytes;
  }
  await client.query(`close "lines"`);
}

/** Folds files into a ZIP on the disk, never more than a few rows of them in memory. */
function zipInto(handle: FileHandle) {
  let writing: Promise<unknown> = Promise.resolve();
  const zip = new Zip((error, bytes) => {
    writing = error === null ? writing.then(() => handle.write(bytes)) : Promise.reject(error);
  });
  return {
    add: async (name: string, parts: Iterable<Buffer> | AsyncIterable<Buffer>) => {
      const entry = new ZipDeflate(name, { level: 6 });
      zip.add(entry);
      for await (const part of parts) {
        entry.push(part);
        await writing;
      }
      entry.push(new Uint8Array(), true);
      await writing;
    },
    end: async () => {
      zip.end();
      await writing;
    },
  };
}
