import { describe, expect, test } from "vitest";
import { foldedBody } from "../../src/sheet/folded-body.ts";

describe("a folded note", () => {
  test("that has room for all it says keeps it whole", () => {
    expect(foldedBody("T1 overhangs.")).toEqual({ seen: "T1 overhangs.", rest: "" });
  });

  test("ends with a sentence where one has room", () => {
    const sentence = "T1 tips over to the south: its load comes down 0.94 m outside its last bearing.";
    const further = "Two posts, or a set back of 1 m, would hold it.";
    expect(foldedBody(`${sentence} ${further}`)).toEqual({ seen: sentence, rest: further });
  });

  test("else ends with a word that does not wait for the next one, and loses nothing", () => {
    const text =
      "F1 comes down on the rails of G1 away from the corners, up to 3.00 m from the nearest; its bearings to the south are held by nothing.";
    const { seen, rest } = foldedBody(text);
    expect(`${seen} ${rest}`).toBe(text);
    expect(seen).not.toMatch(/ (the|of|to|[\d.]+)$/);
    expect(seen.length).toBeGreaterThan(60);
  });

  test("stays whole where its first word alone has no room", () => {
    const text = `${"a".repeat(100)} and more`;
    expect(foldedBody(text)).toEqual({ seen: text, rest: "" });
  });
});
