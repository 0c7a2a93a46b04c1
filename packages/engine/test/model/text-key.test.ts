import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { textKey } from "../../src/model/text-key.ts";

describe("textKey", () => {
  // FNV-1a of 32 bits, published test vectors: "" is 811c9dc5, "a" e40c292c, "foobar" bf9cf968.
  it.each([
    ["", 0x811c9dc5],
    ["a", 0xe40c292c],
    ["foobar", 0xbf9cf968],
  ])("begins with the published sum of %j after its length", (text, sum) => {
    const [length, first] = textKey(text).split(":").map(Number);
    expect(length).toBe(text.length);
    expect((first ?? 0) >>> 0).toBe(sum);
  });

  it("is the same for the same text, and differs with every change of one character", () => {
    fc.assert(
      fc.property(
        fc.string({ minLength: 1 }),
        fc.nat(),
        fc.string({ minLength: 1, maxLength: 1 }),
        (text, at, other) => {
          expect(textKey(text)).toBe(textKey(text));
          const place = at % text.length;
          const changed = text.slice(0, place) + other + text.slice(place + 1);
          if (changed !== text) expect(textKey(changed)).not.toBe(textKey(text));
        },
      ),
    );
  });
});
