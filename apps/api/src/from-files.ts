import { readFileSync } from "node:fs";

const suffix = "_FILE";

/**
 * The environment with every `NAME_FILE` read: `NAME` is what that file holds, without the line end after it. Secrets
 * come this way, which the environment of a process would show to others. Throws when a file cannot be read, and when
 * both are given.
 */
export function fromFiles(environment: NodeJS.ProcessEnv): NodeJS.ProcessEnv {
  const all = { ...environment };
  for (const [name, file] of Object.entries(environment)) {
    if (!name.endsWith(suffix) || !file || !known.has(name.slice(0, -suffix.length))) continue;
    const plain = name.slice(0, -suffix.length);
    if (all[plain]) throw new Error(`${plain}: give it or ${name}, not both`);
    all[plain] = readFileSync(file, "utf8").replace(/\r?\n$/, "");
  }
  return all;
}

/** What may come from a file; other programs have names that end the same way. */
const known = new Set(["DATABASE_URL", "DATABASE_PASSWORD", "SERVICE_PASSWORD", "SMTP_URL", "SECRETS_KEY"]);

/** The address of a database with its password, where that is given apart. */
export function withPassword(url: string, password: string | undefined): string {
  if (password === undefined) return url;
  const parts = new URL(url);
  parts.password = encodeURIComponent(password);
  return parts.href;
}
