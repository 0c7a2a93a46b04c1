import { describe, expect, it } from "vitest";
import { everyKey } from "../../src/room/every-key.ts";
import { compareKeyLines } from "../../src/screens/compare/compare-keys.ts";
import { reviewKeyLines } from "../../src/screens/review/review-keys.ts";
import { schemeKeyLines } from "../../src/screens/scheme/scheme-key-lines.ts";

describe("the page that explains the keys", () => {
  it("has every key of the drawing sheet with the same words", () => {
    for (const line of schemeKeyLines) expect(everyKey).toContainEqual(line);
  });

  it("has every key of the review sheet that the drawing sheet lacks", () => {
    const own = reviewKeyLines.filter(([key]) => !schemeKeyLines.some(([other]) => other === key));
    const told = everyKey.map(([key]) => key).join(" ");
    for (const [key] of own) for (const part of key.split(/[ ,]+/)) expect(told, key).toContain(part);
  });

  it("has every key of the sheet that compares", () => {
    const told = everyKey.map(([key]) => key);
    for (const [key] of compareKeyLines) expect(told).toContain(key);
  });
});
