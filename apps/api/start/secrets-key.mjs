import { randomBytes } from "node:crypto";
import { existsSync, mkdirSync, readFileSync, writeFileSync } from "node:fs";
import path from "node:path";

const KEY_BYTES = 32;

/**
 * The key under which the service seals the secrets of webhooks, drawn at random the first time and kept in the data
 * folder beside the passwords, outside the database; only its owner may read it.
 * @param {string} dataFolder
 */
export function keptSecretsKey(dataFolder) {
  const folder = path.join(dataFolder, "secrets");
  const file = path.join(folder, "secrets-key");
  const kept = existsSync(file) ? readFileSync(file, "utf8").trim() : "";
  if (kept !== "") return kept;
  const key = randomBytes(KEY_BYTES).toString("hex");
  mkdirSync(folder, { recursive: true, mode: 0o700 });
  writeFileSync(file, key, { mode: 0o600, flush: true });
  return key;
}
