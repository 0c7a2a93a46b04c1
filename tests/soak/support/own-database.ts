import { chmodSync, mkdtempSync } from "node:fs";
import os from "node:os";
import path from "node:path";
import { migrate, startPostgres, type RunningPostgres } from "../../../apps/api/src/database/index.ts";

/** A PostgreSQL of a run's own with the tables made; it waits for the disk where `durable`, as a kept one does. */
export async function ownDatabase(durable = false): Promise<RunningPostgres & { folder: string }> {
  const folder = mkdtempSync(path.join(os.tmpdir(), "cornerway-soak-"));
  chmodSync(folder, 0o755); // run by root, PostgreSQL works as nobody and must be able to enter
  const database = await startPostgres({ dataFolder: folder, keep: durable });
  await migrate(database.ownerUrl);
  return { ...database, folder };
}
