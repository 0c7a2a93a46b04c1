import { readFileSync } from "node:fs";
import path from "node:path";
import { serviceActor } from "@cornerway/schema";
import { afterAll, beforeAll, expect, it } from "vitest";
import { freshDatabase, type FreshDatabase } from "../../../../tests/support/fresh-database.ts";
import { readArchive } from "../../src/archive/project-archive.ts";
import { bringInArchive } from "../../src/services/archive/bring-in-archive.ts";
import { openDatabase, type Database } from "../../src/store/database.ts";

/**
 * An archive that an earlier version made, kept as it came out (form 1, engine 0.3.8): every later version reads it. What
 * is expected of it was read off when it was made.
 */
const bytes = readFileSync(path.join(import.meta.dirname, "kept/archive-1.zip"));

let fresh: FreshDatabase;
let database: Database;
beforeAll(async () => {
  fresh = await freshDatabase();
  database = openDatabase(fresh.serviceUrl);
});
afterAll(async () => {
  await database?.close();
  await fresh?.drop();
});

it("an archive of an earlier version is whole, and comes in with its record, its revision, its file and its notes", async () => {
  const found = await readArchive(bytes, {});
  if (!found.whole) throw new Error(found.faults.join("; "));
  const { project, head } = found.archive.manifest;
  const outcome = await bringInArchive(database, serviceActor, { bytes, fingerprint: head.fingerprint });
  expect(outcome).toMatchObject({ ok: true, value: { name: "Lock Lane", entries: head.number } });
  const db = database.connection;
  const where = { projectId: project.id };
  const counts = [
    await db.revision.count({ where }),
    await db.keptFile.count({ where }),
    await db.note.count({ where }),
  ];
  expect(counts).toEqual([1, 1, 2]);
  const last = await db.recordEntry.findUnique({
    where: { projectId_number: { projectId: project.id, number: head.number } },
  });
  expect(last?.head).toBe(head.head);
});
