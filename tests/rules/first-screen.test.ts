import { gzipSync } from "node:zlib";
import path from "node:path";
import { fileURLToPath } from "node:url";
import { build, type Rolldown } from "vite";
import { beforeAll, describe, expect, it } from "vitest";

const web = fileURLToPath(new URL("../../apps/web", import.meta.url));

/** What a screen may weigh on the wire before anything is drawn on it, kB gzip (1 kB = 1000 bytes). */
const mostKb = 250;

interface Weighed {
  part: string;
  kb: number;
}

/** The script a page runs before its screen can be shown: its entry, the screen's own part and all these need at once, heaviest first. */
function partsOf(chunks: ReadonlyMap<string, Rolldown.OutputChunk>, screen: string | null): Weighed[] {
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
  return [...needed]
    .map((part) => ({ part, kb: gzipSync(chunks.get(part)?.code ?? "", { level: 9 }).length / 1000 }))
    .toSorted((a, b) => b.kb - a.kb);
}

const weightKb = (parts: readonly Weighed[]): number => parts.reduce((sum, { kb }) => sum + kb, 0);

/** "161.0 assets/index-….js" on a line for each part. */
const table = (parts: readonly Weighed[]): string => parts.map(({ part, kb }) => `${kb.toFixed(1)} ${part}`).join("\n");

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

  const screens: readonly (readonly [string, string | null])[] = [
    ["signing in", null],
    ["the desk", "desk/Desk.tsx"],
    ["sheet 1, where the architect lands", "scheme/SchemeSheet.tsx"],
    ["sheet 2", "openings/OpeningsSheet.tsx"],
    ["sheet 3, where the engineer lands", "review/ReviewSheet.tsx"],
    ["sheet 4", "compare/CompareSheet.tsx"],
    ["sheet 5, where the owner lands", "status/StatusSheet.tsx"],
    ["sheet 6", "calculations/CalculationsSheet.tsx"],
    ["sheet 7, where a reader lands", "record/RecordSheet.tsx"],
  ];

  it.each(screens)("of %s weighs no more than it may", (name, screen) => {
    const own =
      screen === null ? null : [...chunks.values()].find(({ facadeModuleId }) => facadeModuleId?.endsWith(screen));
    expect(own === undefined, `no part of its own for ${screen}`).toBe(false);
    const parts = partsOf(chunks, screen);
    console.log(`${name}: ${weightKb(parts).toFixed(1)} kB gzip in ${parts.length} parts\n${table(parts)}`);
    expect(weightKb(parts), table(parts)).toBeLessThanOrEqual(mostKb);
  });

  it("holds no writer of JSON Schema, and says so to whoever asks for one", () => {
    const code = [...chunks.values()].map((chunk) => chunk.code).join("\n");
    expect(code).toContain("the page holds no writer of JSON Schema");
    expect(code).not.toContain("json-schema.org"); // what the writer puts at the head of every schema
  });

  it("would be told apart: a screen weighs more than signing in", () => {
    const weight = (screen: string | null) => weightKb(partsOf(chunks, screen));
    expect(weight("desk/Desk.tsx")).toBeGreaterThan(weight(null) + 10);
  });
});
