import { randomBytes } from "node:crypto";
import { existsSync, mkdirSync, readFileSync, writeFileSync } from "node:fs";
import path from "node:path";

const PASSWORD_BYTES = 32;

/** The password kept under `name` in the data folder, drawn at random the first time; only its owner may read the file. */
export function keptPassword(dataFolder: string, name: string): string {
  const kept = readKeptPassword(dataFolder, name);
  if (kept !== undefined) return kept;
  const password = randomBytes(PASSWORD_BYTES).toString("hex");
  mkdirSync(secretsFolder(dataFolder), { recursive: true, mode: 0o700 });
  writeFileSync(passwordFile(dataFolder, name), password, { mode: 0o600, flush: true });
  return password;
}

/** The kept password, or undefined where there is none (or an empty file, left by a stop between creating and writing it). */
export function readKeptPassword(dataFolder: string, name: string): string | undefined {
  const file = passwordFile(dataFolder, name);
  if (!existsSync(file)) return undefined;
  return readFileSync(file, "utf8").trim() || undefined;
}

function passwordFile(dataFolder: string, name: string): string {
  return path.join(secretsFolder(dataFolder), `${name}-password`);
}

function secretsFolder(dataFolder: string): string {
  return path.join(dataFolder, "secrets");
}
