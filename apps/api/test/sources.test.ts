import { readFileSync, readdirSync } from "node:fs";
import path from "node:path";
import { problemCodes } from "@cornerway/schema";
import { describe, expect, it } from "vitest";

const root = path.resolve(import.meta.dirname, "../src");
const sources = readdirSync(root, { recursive: true, encoding: "utf8" })
  .filter((file) => file.endsWith(".ts") && !file.startsWith("generated"))
  .map((file) => ({ file, text: readFileSync(path.join(root, file), "utf8") }));

const filesWith = (pattern: RegExp) => sources.filter(({ text }) => pattern.test(text)).map(({ file }) => file);

describe("the sources of the service", () => {
  it("write the record in one place: record/append.ts", () => {
    expect(filesWith(/import .*\b(insertEntry|takePlace)\b/)).toEqual(["record/append.ts"]);
    expect(filesWith(/insert into "record_|recordEntry\.create|recordPayload\.create/)).toEqual([
      "store/record-rows.ts",
    ]);
  });

  it("know Prisma in the folder store only", () => {
    expect(filesWith(/@prisma\/|generated\/prisma/).filter((file) => !file.startsWith("store/"))).toEqual([]);
  });

  it("read the environment in config.ts and at the ways in", () => {
    const places = filesWith(/process\.env/).filter((file) => !file.startsWith("database/") && !file.startsWith("cli"));
    expect(places.sort()).toEqual(["keep.ts", "seed.ts", "server.ts", "worker.ts"]);
  });

  it("answer every problem that is documented", () => {
    const text = sources.map((source) => source.text).join("\n");
    expect(problemCodes.filter((code) => !text.includes(`"${code}"`))).toEqual([]);
  });
});
