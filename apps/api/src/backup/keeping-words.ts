import { parseArgs } from "node:util";

/** What someone asks of what the service keeps. */
export type Keeping =
  | { what: "backup"; file: string }
  | { what: "restore"; file: string; expected: string | undefined; unsigned: boolean }
  | { what: "archive"; projectId: string; file: string }
  | { what: "bring-in"; file: string; expected: string | undefined };

export const keepingUsage = `usage: npm run backup -- file.zip
       npm run restore -- file.zip [--key fingerprint] [--unsigned]
       npm run archive -- project-id file.zip
       npm run bring-in -- file.zip [--key fingerprint]`;

/** Reads the words of a command; undefined where they are none. */
export function readKeeping(words: readonly string[]): Keeping | undefined {
  const { values, positionals } = parseArgs({
    args: [...words],
    options: { key: { type: "string" }, unsigned: { type: "boolean" } },
    allowPositionals: true,
    strict: false,
  });
  const [what, first, second, ...more] = positionals;
  const { key, unsigned, ...others } = values;
  if (first === undefined || more.length > 0 || Object.keys(others).length > 0) return undefined;
  if (key !== undefined && !(typeof key === "string" && /^[0-9a-f]{64}$/.test(key))) return undefined;
  if (what === "archive" && second !== undefined) return { what, projectId: first, file: second };
  if (second !== undefined) return undefined;
  if (what === "backup") return { what, file: first };
  if (what === "restore") return { what, file: first, expected: key, unsigned: unsigned === true };
  return what === "bring-in" ? { what, file: first, expected: key } : undefined;
}
