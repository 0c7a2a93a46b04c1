import { readFileSync } from "node:fs";
import { cautionLine } from "@cornerway/schema";
import { expect, it } from "vitest";

const print = readFileSync("apps/web/src/look/print.css", "utf8");

it("every printed page of words says at its foot what the sheets say in their title block", () => {
  const [, foot = ""] = /@bottom-left \{([^}]*)\}/.exec(print) ?? [];
  expect(foot).toContain(`content: "${cautionLine}"`);
});
