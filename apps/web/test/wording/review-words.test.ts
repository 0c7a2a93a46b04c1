import type { Owed, SealHindrance, Standing } from "@cornerway/schema";
import { describe, expect, it } from "vitest";
import { owedThing, sideOf } from "../../src/wording/owed-words.ts";
import { hindranceSentence, hindrancesHeading, sizeWords } from "../../src/wording/seal-words.ts";
import { standingSentence } from "../../src/wording/standing-sentence.ts";

const nameOf = (id: string) => id.toUpperCase();

describe("whether a judgement still stands", () => {
  const unchanged = { elements: [], results: [], whole: [] };
  const standing = (more: Partial<Standing>): string =>
    standingSentence({ state: "stands", revision: "A", newest: "C", changed: unchanged, ...more }, nameOf);

  it.each<[string, Partial<Standing>]>([
    ["Given for revision A.", { newest: "A" }],
    ["Given for revision A. Up to revision C nothing it covers has changed.", {}],
    ["Given for revision A. Revision C is not checked yet.", { state: "waits" }],
    [
      "Given for revision A. Revision C changes G1, W3 and what was found of it (bearings and load path).",
      { state: "stale", changed: { elements: ["g1", "w3"], results: ["bearings", "load path"], whole: [] } },
    ],
    [
      "Given for revision A. Revision C changes the site or the code edition and the engine that judges it.",
      { state: "stale", changed: { ...unchanged, whole: ["site and code edition", "engine version"] } },
    ],
  ])("%s", (sentence, more) => {
    expect(standing(more)).toBe(sentence);
  });
});

describe("who owes whom what", () => {
  it.each<[Owed["what"], string]>([
    ["answer", "the answer to question 3"],
    ["information", "the information for question 3"],
    ["question to close", "question 3, to read and close"],
    ["condition", "condition 3"],
    ["condition to close", "condition 3, to look at and close"],
    ["change", "an answer to change request 3"],
    ["price to agree", "a word on the price of change request 3, which was taken in"],
  ])("of kind %s: %s", (what, words) => {
    expect(owedThing({ what, number: 3 })).toBe(words);
  });

  it("calls oneself you, and anyone else by their role", () => {
    expect([sideOf("engineer", ["engineer"]), sideOf("engineer", ["owner"])]).toEqual(["you", "the engineer"]);
  });
});

describe("what stands in the way of the seal", () => {
  const mark: SealHindrance = { why: "mark", markId: "m", verdict: "does not work" };
  const part: SealHindrance = { why: "beyond its limit", ownerId: "g1", part: "corner post", utilisation: 1.237 };

  it("is counted by kind, one and several told as one speaks", () => {
    expect(hindrancesHeading([mark])).toBe("1 mark does not work");
    expect(hindrancesHeading([mark, mark])).toBe("2 marks do not work");
    expect(hindrancesHeading([part])).toBe("1 part is used beyond its strength");
    expect(hindrancesHeading([part, part])).toBe("2 parts are used beyond their strength");
    expect(hindrancesHeading([{ why: "condition open", number: 4 }])).toBe("1 condition is open");
    expect(hindrancesHeading([{ why: "from memory", value: "v" }])).toBe("1 value is from memory and not confirmed");
  });

  it("is told one by one, with numbers and places", () => {
    const told = (hindrance: SealHindrance) => hindranceSentence(hindrance, nameOf, () => "Does not work. G1 tips.");
    expect(told(mark)).toBe("Does not work. G1 tips.");
    expect(told(part)).toBe("corner post of G1 is used to 1.24 of its strength.");
    expect(told({ why: "from memory", value: "ISO 668" })).toBe("From memory: ISO 668");
  });
});

it("a size is told in decimal units, IEC 80000-13: 1 MB is 1 000 000 bytes", () => {
  expect([1, 312_400, 1_449_999].map(sizeWords)).toEqual(["1 kB", "312 kB", "1.4 MB"]);
});
