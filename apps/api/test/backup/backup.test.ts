import { mkdtempSync, readdirSync, readFileSync, rmSync, statSync, writeFileSync } from "node:fs";
import os from "node:os";
import path from "node:path";
import { strToU8, unzipSync, zipSync } from "fflate";
import { afterAll, beforeAll, describe, expect, it } from "vitest";
import { BackupManifest, backupManifestName, manifestText, newSha256 } from "../../src/backup/backup-manifest.ts";
import { keep } from "../../src/backup/keep.ts";
import { keepingUsage, readKeeping } from "../../src/backup/keeping-words.ts";
import { restoreBackup } from "../../src/backup/restore-backup.ts";
import { takeBackup } from "../../src/backup/take-backup.ts";
import { isEmpty, readApplied, readWholeTables } from "../../src/backup/whole-tables.ts";
import { knownMigrations, migrate } from "../../src/database/migrate.ts";
import { withClient } from "../../src/database/with-client.ts";
import { workIn } from "../support/archived-project.ts";
import { emptyDatabase, type EmptyDatabase } from "../support/empty-database.ts";
import { openReviewRoom, signInAll } from "../support/review-room.ts";
import { startService, type TestService } from "../support/service.ts";

const secretsKey = "78".repeat(32);
let service: TestService;
let folder: string;
let file: string;
let manifest: BackupManifest;

beforeAll(async () => {
  folder = mkdtempSync(path.join(os.tmpdir(), "cornerway-backup-"));
  file = path.join(folder, "whole.zip");
  service = await startService({ WORKER: "apart", SECRETS_KEY: secretsKey });
  await workIn(await openReviewRoom(service, await signInAll(service)));
  manifest = await takeBackup(service.database.ownerUrl, file, secretsKey);
});
afterAll(async () => {
  await service?.close();
  rmSync(folder, { recursive: true, force: true });
});

const how = { unsigned: false };

async function inEmpty<T>(work: (database: EmptyDatabase) => Promise<T>): Promise<T> {
  const database = await emptyDatabase();
  try {
    return await work(database);
  } finally {
    await database.drop();
  }
}

/** Every row of every table that is kept, as text. */
const everything = (ownerUrl: string) =>
  withClient(ownerUrl, async (client) => {
    const found: Record<string, unknown[]> = {};
    for (const { name } of await readWholeTables(client))
      found[name] = (await client.query(`select to_jsonb(t)::text as "row" from "${name}" t order by 1`)).rows;
    return found;
  });

let altered = 0;
function withFiles(
  change: (files: Record<string, Uint8Array>, stated: BackupManifest) => BackupManifest | undefined,
): string {
  const files = unzipSync(readFileSync(file));
  const stated = BackupManifest.parse(JSON.parse(Buffer.from(files[backupManifestName] ?? []).toString("utf8")));
  const after = change(files, stated);
  if (after !== undefined) files[backupManifestName] = strToU8(manifestText(after));
  altered += 1;
  const name = path.join(folder, `altered-${altered}.zip`);
  writeFileSync(name, zipSync(files));
  return name;
}

/** Why a backup is not restored; the database is as empty as before, without a table. */
const refused = (name: string, more: Partial<Parameters<typeof restoreBackup>[2]> = {}) =>
  inEmpty(async ({ ownerUrl }) => {
    const outcome = await restoreBackup(ownerUrl, name, { ...how, ...more });
    expect(await withClient(ownerUrl, readApplied)).toEqual([]);
    if (outcome.ok) throw new Error("it was restored");
    return outcome.faults.join("; ");
  });

describe("a backup", () => {
  it("is restored into an empty database row for row, and the service goes on there", async () => {
    await inEmpty(async ({ ownerUrl }) => {
      const restored = await restoreBackup(ownerUrl, file, { ...how, expected: manifest.signed?.fingerprint });
      expect(restored).toMatchObject({ ok: true, applied: [] });
      const [before, after] = [await everything(service.database.ownerUrl), await everything(ownerUrl)];
      expect(Object.keys(after)).toEqual(Object.keys(before));
      for (const name of Object.keys(before)) expect(after[name], name).toEqual(before[name]);
      expect(Object.values(before).flat().length).toBeGreaterThan(40);
      expect(await migrate(ownerUrl)).toEqual([]);
    });
  });

  it("holds every table but what passes by itself, and no session", async () => {
    const { rows } = await withClient(service.database.ownerUrl, (client) =>
      client.query<{ name: string }>(
        `select relname::text as "name" from pg_class where relnamespace = 'public'::regnamespace and relkind = 'r'`,
      ),
    );
    const passing = ["_prisma_migrations", "rate_window", "repeatable_answer", "session", "worker"];
    const held = manifest.files.map(({ table }) => table);
    expect([...held, ...passing].toSorted()).toEqual(rows.map(({ name }) => name).toSorted());
  });

  it("is for its owner alone, and never lies half written under its name", async () => {
    expect(statSync(file).mode & 0o077).toBe(0);
    const gone = path.join(folder, "gone.zip");
    const unreachable = new URL(service.database.ownerUrl);
    unreachable.pathname = "/there_is_none";
    await expect(takeBackup(unreachable.href, gone, undefined)).rejects.toThrow("sign-in-refused");
    expect(readdirSync(folder).filter((name) => name.startsWith("gone"))).toEqual([]);
    await expect(
      takeBackup(service.database.ownerUrl, path.join(folder, "no", "folder.zip"), undefined),
    ).rejects.toThrow("ENOENT");
  });

  it("is not restored where anyone is known already", async () => {
    const outcome = await restoreBackup(service.database.ownerUrl, file, how);
    expect(outcome).toEqual({ ok: false, faults: ["the database is not empty: there are people or projects in it"] });
  });

  it("cut short anywhere is refused and writes nothing", async () => {
    const whole = readFileSync(file);
    for (const part of [0, 0.3, 0.7, 0.99]) {
      const short = path.join(folder, `short-${part}.zip`);
      writeFileSync(short, whole.subarray(0, Math.floor(whole.length * part)));
      expect(await refused(short)).toMatch(/^it is not a whole backup/);
    }
  });

  it("with one row altered is refused: by its digest, and by its signature where the digest was altered with it", async () => {
    const table = "rows/membership.ndjson";
    const forge = (files: Record<string, Uint8Array>) => {
      const forged = Buffer.from(files[table] ?? [])
        .toString("utf8")
        .replace('"architect"', '"engineer"');
      files[table] = strToU8(forged);
    };
    const plain = withFiles((files) => {
      forge(files);
      return undefined;
    });
    expect(await refused(plain)).toMatch(/^rows\/membership\.ndjson: is not the file that was stated/);
    const restated = withFiles((files, stated) => {
      forge(files);
      const bytes = files[table] ?? new Uint8Array();
      const digest = newSha256().update(bytes).digest("hex");
      return {
        ...stated,
        files: stated.files.map((each) => (each.name === table ? { ...each, digest, bytes: bytes.length } : each)),
      };
    });
    expect(await refused(restated)).toBe("the signature does not hold: what it states is not what was signed");
    const unsigned = withFiles((_files, stated) => ({ ...stated, signed: null }));
    expect(await refused(unsigned)).toMatch(/^it is not signed/);
    expect(await refused(unsigned, { unsigned: true, expected: "ab".repeat(32) })).toMatch(/^it is not signed/);
    expect(await refused(file, { expected: "ab".repeat(32) })).toBe(
      "no key of it has the fingerprint that was expected",
    );
  });

  it("of a service that signs nothing is restored only where that is asked for", async () => {
    const plain = path.join(folder, "unsigned.zip");
    expect((await takeBackup(service.database.ownerUrl, plain, undefined)).signed).toBeNull();
    expect(await refused(plain)).toMatch(/--unsigned takes it as it is/);
    await inEmpty(async ({ ownerUrl }) =>
      expect(await restoreBackup(ownerUrl, plain, { unsigned: true })).toMatchObject({ ok: true }),
    );
  });

  it("of an older version is restored into the tables of that time, which are then brought up to date", async () => {
    const all = knownMigrations();
    const then = all.slice(0, 9);
    await inEmpty(async (old) => {
      await migrate(old.ownerUrl, undefined, new Set(then));
      await withClient(old.ownerUrl, (client) =>
        client.query(
          `insert into "person" ("id", "name", "email", "password_hash") values (gen_random_uuid(), 'Ilse Tarn', 'ilse@tarn.example', 'x')`,
        ),
      );
      const older = path.join(folder, "older.zip");
      expect((await takeBackup(old.ownerUrl, older, undefined)).migrations).toEqual(then);
      await inEmpty(async ({ ownerUrl }) => {
        const restored = await restoreBackup(ownerUrl, older, { unsigned: true });
        expect(restored).toMatchObject({ ok: true, applied: all.slice(9) });
        const { rows } = await withClient(ownerUrl, (client) => client.query(`select "name", "by_link" from "person"`));
        expect(rows).toEqual([{ name: "Ilse Tarn", by_link: false }]);
      });
      await inEmpty(async ({ ownerUrl }) => {
        await migrate(ownerUrl);
        const outcome = await restoreBackup(ownerUrl, older, { unsigned: true });
        expect(outcome).toMatchObject({ ok: false, faults: [expect.stringMatching(/newer than the backup/)] });
        expect(await withClient(ownerUrl, isEmpty)).toBe(true);
      });
    });
  });

  it("of a later version is refused, and says what is not known here", async () => {
    const name = "29990101000000_what_is_to_come";
    const later = withFiles((_files, stated) => ({
      ...stated,
      migrations: [...stated.migrations, name],
      signed: null,
    }));
    expect(await refused(later, { unsigned: true })).toBe(`it was made by a later version: ${name} is not known here`);
  });

  it("that does not fit its tables leaves no row behind", async () => {
    const broken = withFiles((files, stated) => {
      const table = "rows/record_entry.ndjson";
      const lines = Buffer.from(files[table] ?? [])
        .toString("utf8")
        .trimEnd()
        .split("\n");
      files[table] = strToU8(`${lines.slice(1).join("\n")}\n`); // the first entry is gone: the trigger refuses the second
      const bytes = files[table];
      const restated = { bytes: bytes.length, digest: newSha256().update(bytes).digest("hex"), rows: lines.length - 1 };
      return {
        ...stated,
        signed: null,
        files: stated.files.map((each) => (each.name === table ? { ...each, ...restated } : each)),
      };
    });
    await inEmpty(async ({ ownerUrl }) => {
      await expect(restoreBackup(ownerUrl, broken, { unsigned: true })).rejects.toThrow(/does not follow/);
      expect(await withClient(ownerUrl, isEmpty)).toBe(true);
    });
  });
});

describe("the commands", () => {
  it("know their words, and say them where they are others", () => {
    const key = "ab".repeat(32);
    expect(readKeeping(["backup", "a.zip"])).toEqual({ what: "backup", file: "a.zip" });
    expect(readKeeping(["restore", "a.zip", "--key", key])).toMatchObject({ expected: key, unsigned: false });
    expect(readKeeping(["archive", "p", "a.zip"])).toEqual({ what: "archive", projectId: "p", file: "a.zip" });
    for (const words of [
      [],
      ["backup"],
      ["backup", "a", "b"],
      ["restore", "a", "--key", "x"],
      ["mend", "a"],
      ["backup", "a", "--yes"],
    ])
      expect(readKeeping(words), words.join(" ")).toBeUndefined();
    expect(keepingUsage).toContain("npm run restore");
  });

  it("take a project out of one database and bring it into another", async () => {
    const taken = path.join(folder, "project.zip");
    const [project] = await service.owner.connection.project.findMany({ select: { id: true } });
    await keep(
      { what: "archive", projectId: project?.id ?? "", file: taken },
      { ownerUrl: service.database.ownerUrl, secretsKey },
    );
    await inEmpty(async ({ ownerUrl }) => {
      await migrate(ownerUrl);
      const bringIn = { what: "bring-in", file: taken, expected: manifest.signed?.fingerprint } as const;
      const lines = await keep(bringIn, { ownerUrl, secretsKey: undefined });
      expect(lines[0]).toMatch(/^Lock Lane \(.*\): brought in with \d+ entries, signed by /);
      await expect(keep(bringIn, { ownerUrl, secretsKey: undefined })).rejects.toThrow("project-here");
    });
  });
});
