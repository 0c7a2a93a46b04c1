import { gzipSync } from "node:zlib";
import path from "node:path";
import { fileURLToPath } from "node:url";
import { build, type Rolldown } from "vite";
import { beforeAll, describe, expect, it } from "vitest";

const web = fileURLToPath(new URL("../../apps/web", import.meta.url));

/** What a screen may weigh on the wire before anything is drawn on it, kB gzip (1 kB = 1000 bytes). */
const mostKb = 250;
/** Sheets one draws on bring the paper with its views, and sheet 3 its slips: limits of their own until more is fetched later. */
const mostKbOf1 = 260;
const mostKbOf3 = 271;

/** The script a page runs before its screen can be shown: its entry, the screen's own part and all these need at once. */
function weightKb(chunks: ReadonlyMap<string, Rolldown.OutputChunk>, screen: string | null): number {
  const needed = new Set<string>();
  const take = (name: string): void => {
    const chunk = chunks.get(name);
    if (chunk === undefined || needed.has(name)) return;
    needed.add(name);
    chunk.imports.forEach(take);
  };
  for (const [name, chunk] of chunks) {
    const module = chunk.facadeModuleId?.replaceAll(path.sep, "/") ?? "";
    if (module.endsWith("/apps/web/index.html") || (screen !== null && module.endsWith(`/src/screens/${screen}`)))
      take(name);
  }
  const bytes = [...needed].reduce((sum, name) => sum + gzipSync(chunks.get(name)?.code ?? "", { level: 9 }).length, 0);
  return bytes / 1000;
}

describe("the script of a first screen, as built for production", () => {
  let chunks: Map<string, Rolldown.OutputChunk>;

  beforeAll(async () => {
    const before = process.env["NODE_ENV"];
    process.env["NODE_ENV"] = "production";
    const built = await build({ root: web, logLevel: "silent", mode: "production", build: { write: false } });
    process.env["NODE_ENV"] = before;
    if (Array.isArray(built) || !("output" in built)) throw new Error("one build was asked for");
    chunks = new Map(built.output.flatMap((part) => (part.type === "chunk" ? [[part.fileName, part]] : [])));
  }, 180_000);

  const screens: readonly (readonly [string, string | null, number])[] = [
    ["signing in", null, mostKb],
    ["the desk", "desk/Desk.tsx", mostKb],
    ["sheet 5, where the owner lands", "status/StatusSheet.tsx", mostKb],
    ["sheet 7, where a reader lands", "record/RecordSheet.tsx", mostKb],
    ["sheet 1, where the architect lands", "scheme/SchemeSheet.tsx", mostKbOf1],
    ["sheet 3, where the engineer lands", "review/ReviewSheet.tsx", mostKbOf3],
  ];

  it.each(screens)("of %s weighs no more than it may", (_name, screen, most) => {
    const own =
      screen === null ? null : [...chunks.values()].find(({ facadeModuleId }) => facadeModuleId?.endsWith(screen));
    expect(own === undefined, `no part of its own for ${screen}`).toBe(false);
    expect(weightKb(chunks, screen)).toBeLessThanOrEqual(most);
  });

  it("holds no writer of JSON Schema, and says so to whoever asks for one", () => {
    const code = [...chunks.values()].map((chunk) => chunk.code).join("\n");
    expect(code).toContain("the page holds no writer of JSON Schema");
    expect(code).not.toContain("json-schema.org"); // what the writer puts at the head of every schema
  });

  it("would be told apart: a screen weighs more than signing in", () => {
    expect(weightKb(chunks, "desk/Desk.tsx")).toBeGreaterThan(weightKb(chunks, null) + 10);
  });
});
