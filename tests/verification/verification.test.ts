import { readFileSync } from "node:fs";
import { engineVersion } from "@cornerway/engine";
import { describe, expect, it } from "vitest";
import { families } from "./families/families.ts";
import { manualOf } from "./manual.ts";
import { htmlOf, markdownOf } from "./print-manual.ts";

const manual = manualOf(families, engineVersion);
const rows = manual.families.flatMap((family) => family.rows);
const kept: unknown = JSON.parse(
  readFileSync(new URL("../../shared/verification/manual.json", import.meta.url), "utf8"),
);

describe("the verification manual", () => {
  it("has no two cases of one name, and an answer to each", () => {
    expect(new Set(rows.map(({ id }) => id)).size).toBe(rows.length);
    expect(rows.filter(({ ours }) => !Number.isFinite(ours)).map(({ id }) => id)).toEqual([]);
  });

  it("lies within what its reference allows, case by case, but where it says why not", () => {
    expect(rows.filter(({ within, departs }) => within === (departs !== undefined))).toEqual([]);
  });

  it("is the one kept with the project; `npm run verify` writes it", () => {
    expect(JSON.parse(JSON.stringify(manual))).toEqual(kept);
  });

  it("counts the four certainties apart, each case once, and calls memory and practice not verified", () => {
    expect(manual.counts.map(({ cases }) => cases).reduce((sum, cases) => sum + cases)).toBe(rows.length);
    for (const text of [markdownOf(manual), htmlOf(manual)]) {
      expect(text).toContain("from memory, not verified");
      expect(text).toContain("common practice, not verified");
    }
  });

  it("prints every case with its source and its certainty, in Markdown and HTML, under the cautions", () => {
    const [markdown, html] = [markdownOf(manual), htmlOf(manual)];
    for (const { title } of manual.families) {
      expect(markdown).toContain(`## ${title}`);
      expect(html).toContain(`<h2>${title}</h2>`);
    }
    expect(html.match(/<tr><td>/g)?.length).toBe(rows.length + manual.counts.length);
    expect(markdown).toContain("Screening, preliminary until sealed by a licensed engineer.");
  });
});
