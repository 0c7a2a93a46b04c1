import { readFile, writeFile } from "node:fs/promises";
import { ProjectId, serviceActor } from "@cornerway/schema";
import { bringInArchive } from "../services/archive/bring-in-archive.ts";
import { takeArchive } from "../services/archive/take-archive.ts";
import type { Outcome, Refusal } from "../outcome.ts";
import { openDatabase, type Database } from "../store/database.ts";
import type { Keeping } from "./keeping-words.ts";
import { restoreBackup } from "./restore-backup.ts";
import { takeBackup } from "./take-backup.ts";

export interface KeepingPlace {
  ownerUrl: string;
  /** What private keys are sealed under; nothing is signed where it is left out. */
  secretsKey: string | undefined;
}

/** Does what was asked and says what was done, line by line. Throws one error that says what is wrong and what to do. */
export async function keep(asked: Keeping, { ownerUrl, secretsKey }: KeepingPlace): Promise<string[]> {
  switch (asked.what) {
    case "backup": {
      const { files, signed } = await takeBackup(ownerUrl, asked.file, secretsKey);
      const rows = files.reduce((sum, file) => sum + file.rows, 0);
      return [
        `${asked.file}: ${rows} rows of ${files.length} tables, ${signed === null ? "not signed" : `signed by ${signed.fingerprint}`}.`,
        "It holds hashes of passwords: keep it closed. SECRETS_KEY is not in it: keep that apart, or heads and webhooks are lost.",
      ];
    }
    case "restore": {
      const restored = await restoreBackup(ownerUrl, asked.file, asked);
      if (!restored.ok) throw new Error(`${asked.file}: nothing was restored: ${restored.faults.join("; ")}`);
      const { manifest, applied } = restored;
      return [
        `Restored as it stood ${manifest.madeAt}${manifest.signed === null ? "" : `, signed by ${manifest.signed.fingerprint}`}.`,
        ...(applied.length === 0 ? [] : [`Tables brought up to date: ${applied.join(", ")}.`]),
        "Everyone signs in anew. Start the service with the SECRETS_KEY it had.",
      ];
    }
    case "archive":
      return withDatabase(ownerUrl, async (database) => {
        const taken = done(await takeArchive(database, ProjectId.parse(asked.projectId), secretsKey));
        await writeFile(asked.file, taken.bytes, { flag: "wx", mode: 0o600 });
        return [`${asked.file}: the project with ${taken.entries} entries of its record.`];
      });
    case "bring-in":
      return withDatabase(ownerUrl, async (database) => {
        const sent = { bytes: await readFile(asked.file), fingerprint: asked.expected };
        const { name, projectId, entries, signedBy } = done(await bringInArchive(database, serviceActor, sent));
        return [
          `${name} (${projectId}): brought in with ${entries} entries, signed by ${signedBy}${asked.expected === undefined ? ", which nothing from outside confirms" : ""}.`,
          "Nobody has a part in it until an administrator asks them in.",
        ];
      });
  }
}

async function withDatabase<T>(ownerUrl: string, work: (database: Database) => Promise<T>): Promise<T> {
  const database = openDatabase(ownerUrl);
  try {
    return await work(database);
  } finally {
    await database.close();
  }
}

function done<T>(outcome: Outcome<T>): T {
  if (outcome.ok) return outcome.value;
  const { code, detail }: Refusal = outcome.refusal;
  throw new Error(detail === undefined ? code : `${code}: ${detail}`);
}
