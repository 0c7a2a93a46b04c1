import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { canonicalJson, NewNote, personText, Tag } from "../src/index.ts";

const text = personText(40);

describe("personText", () => {
  // Unicode Standard Annex 15, figure 3: e and a combining acute accent compose to é.
  it("brings two spellings of one text to one: NFC", () => {
    expect(text.parse("Cafe\u0301")).toBe("Caf\u00e9");
    expect(text.parse("Caf\u00e9")).toBe("Caf\u00e9");
  });

  it.each([
    ["a lone high surrogate", "a\ud800b"],
    ["a lone low surrogate", "\udc00"],
    ["a NUL", "a\0b"],
    ["nothing", ""],
    ["more than it may hold", "x".repeat(41)],
  ])("refuses %s", (_what, value) => {
    expect(text.safeParse(value).success).toBe(false);
  });

  it("takes characters beyond the first plane whole", () => {
    expect(text.parse("a \u{1f4d0} b")).toBe("a \u{1f4d0} b");
  });

  it("gives, for whatever it takes, text that canonical JSON can write, and the same when read again", () => {
    fc.assert(
      fc.property(fc.string({ unit: "binary", maxLength: 60 }), (value) => {
        const read = text.safeParse(value);
        if (!read.success) return;
        expect(JSON.parse(canonicalJson(read.data))).toBe(read.data);
        expect(text.parse(read.data)).toBe(read.data);
      }),
      { seed: 15, numRuns: 500 },
    );
  });
});

describe("Tag", () => {
  it.each(["G1", "D12", "ABC9999"])("takes %s", (tag) => expect(Tag.parse(tag)).toBe(tag));
  it.each(["g1", "1G", "G", "G12345", "ABCD1", "G1 ", "G1\n"])("refuses %j", (tag) =>
    expect(Tag.safeParse(tag).success).toBe(false),
  );
});

describe("NewNote", () => {
  it("takes a mark's id only in printable ASCII, which every store can hold", () => {
    const note = {
      id: "8a7c3f7e-7f0b-4c5d-9a3e-0c6f3c2b1a00",
      elementId: "g1",
      revision: null,
      answers: null,
      text: "?",
    };
    expect(NewNote.safeParse({ ...note, markId: "overhang:g1:door" }).success).toBe(true);
    for (const markId of ["", "a\0", "\ud800", "é", "x".repeat(401)])
      expect(NewNote.safeParse({ ...note, markId }).success).toBe(false);
  });
});
