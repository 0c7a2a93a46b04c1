import { execFile } from "node:child_process";
import { chownSync, existsSync, mkdirSync, readFileSync, renameSync, rmSync, writeFileSync } from "node:fs";
import path from "node:path";
import { promisify } from "node:util";
import { DatabaseTrouble } from "./database-trouble.ts";
import { keptPassword, readKeptPassword } from "./kept-password.ts";
import { programEnvironment, type PostgresPrograms } from "./postgres-programs.ts";
import { postgresTrouble } from "./postgres-trouble.ts";
import type { SystemAccount } from "./system-account.ts";

export const OWNER_ROLE = "cornerway_owner";

export interface Cluster {
  folder: string;
  ownerPassword: string;
}

interface ClusterPlan {
  dataFolder: string;
  programs: PostgresPrograms;
  account: SystemAccount;
  durable: boolean;
}

const run = promisify(execFile);

/** The PostgreSQL cluster in `dataFolder`, made there the first time. */
export async function createCluster(plan: ClusterPlan): Promise<Cluster> {
  const folder = path.join(plan.dataFolder, "postgres");
  if (existsSync(folder)) return existingCluster(folder, plan);
  const ownerPassword = keptPassword(plan.dataFolder, "owner");
  await initialise(folder, ownerPassword, plan);
  return { folder, ownerPassword };
}

function existingCluster(folder: string, { dataFolder, programs }: ClusterPlan): Cluster {
  const written = readFileSync(path.join(folder, "PG_VERSION"), "utf8").trim();
  if (written !== programs.mainVersion)
    throw new DatabaseTrouble("other-version", `${written}, not ${programs.mainVersion}`);
  const ownerPassword = readKeptPassword(dataFolder, "owner");
  if (ownerPassword === undefined) throw new DatabaseTrouble("password-lost", folder);
  return { folder, ownerPassword };
}

/** Works under another name and renames at the end, so that a stop half way leaves nothing that looks whole. */
async function initialise(folder: string, ownerPassword: string, plan: ClusterPlan): Promise<void> {
  const unfinished = `${folder}.unfinished`;
  const passwordFile = `${folder}.password`;
  for (const place of [unfinished, passwordFile]) rmSync(place, { recursive: true, force: true });
  mkdirSync(unfinished, { mode: 0o700 });
  writeFileSync(passwordFile, ownerPassword, { mode: 0o600 });
  for (const place of [unfinished, passwordFile]) handTo(place, plan.account);
  await runInitdb(initdbWords(unfinished, passwordFile, plan.durable), plan).finally(() => rmSync(passwordFile));
  renameSync(unfinished, folder);
}

function initdbWords(folder: string, passwordFile: string, durable: boolean): string[] {
  const words = [
    "-D",
    folder,
    "-U",
    OWNER_ROLE,
    "-A",
    "scram-sha-256",
    `--pwfile=${passwordFile}`,
    "-E",
    "UTF8",
    "--locale=C",
  ];
  return durable ? words : [...words, "--no-sync"];
}

async function runInitdb(words: string[], { programs, account }: ClusterPlan): Promise<void> {
  try {
    await run(path.join(programs.folder, "bin", "initdb"), words, {
      ...account,
      cwd: "/",
      env: programEnvironment(programs),
    });
  } catch (error) {
    throw postgresTrouble(error instanceof Error && "stderr" in error ? String(error.stderr) : String(error), error);
  }
}

function handTo(place: string, { uid, gid }: SystemAccount): void {
  if (uid !== undefined && gid !== undefined) chownSync(place, uid, gid);
}
