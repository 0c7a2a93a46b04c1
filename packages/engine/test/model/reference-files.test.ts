import { createHash } from "node:crypto";
import { readFileSync, readdirSync } from "node:fs";
import { describe, expect, it } from "vitest";

const folder = new URL("../../../../shared/reference/", import.meta.url);
const sums = readFileSync(new URL("SHA256SUMS", folder), "utf8")
  .trim()
  .split("\n")
  .map((line) => line.split(/\s+\*?/) as [string, string]);

describe("the reference buildings", () => {
  it.each(sums)("%s is the digest of %s", (sum, name) => {
    expect(
      createHash("sha256")
        .update(readFileSync(new URL(name.replace(/^\.\//, ""), folder)))
        .digest("hex"),
    ).toBe(sum);
  });

  it("every reference file has a pinned digest, and every digest a file", () => {
    const files = readdirSync(folder, { recursive: true, encoding: "utf8" }).filter((name) => name.endsWith(".json"));
    expect(sums.map(([, name]) => name.replace(/^\.\//, "")).sort()).toEqual(files.sort());
  });
});
