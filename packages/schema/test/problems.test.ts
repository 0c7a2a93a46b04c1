import { readFileSync } from "node:fs";
import path from "node:path";
import { describe, expect, it } from "vitest";
import { problemCodes, problems } from "../src/index.ts";

const page = readFileSync(path.resolve(import.meta.dirname, "../PROBLEMS.md"), "utf8");
const documented = [...page.matchAll(/^## (\S+)\n(\d{3}) · (.+)$/gm)].map(([, code, status, title]) => ({
  code,
  status: Number(status),
  title,
}));

describe("PROBLEMS.md", () => {
  it("has every problem of the catalogue with its status and its sentence, and none besides", () => {
    expect(documented).toEqual(problemCodes.map((code) => ({ code, ...problems[code] })));
  });

  it("has no heading that is not read by the test above", () => {
    expect(page.match(/^## /gm)).toHaveLength(documented.length);
  });
});

describe("every problem", () => {
  it.each(problemCodes)("%s has a status that RFC 9110 gives to errors, and a sentence", (code) => {
    expect([400, 401, 403, 404, 409, 410, 412, 413, 415, 422, 429, 500, 503]).toContain(problems[code].status);
    expect(problems[code].title).toMatch(/^[A-Z].*\.$/);
  });
});
