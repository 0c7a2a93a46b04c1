import { premium } from "@cornerway/engine";
import { demoCostBook, type DecisionShown, type Mark } from "@cornerway/schema";
import { describe, expect, it } from "vitest";
import { lastWord } from "../../src/data/decision.ts";
import { apartWords, uncheckedWords } from "../../src/prices/apart-words.ts";
import { premiumGroups } from "../../src/prices/premium-groups.ts";
import { addsWords } from "../../src/prices/RequestPrice.tsx";
import { demoScheme } from "../support/demo-scheme.ts";
import { furnished } from "../support/furnished.ts";

const mark = (verdict: Mark["verdict"], id: string): Mark => ({
  ...{ id, verdict, elements: ["o1"], certainty: "derived", basis: "a test", at: { xMm: 0, yMm: 0, zMm: 0 } },
  fact: { kind: "openings-overlap" },
});

describe("premiumGroups", () => {
  it("add up to the total, the engineer last", () => {
    const counted = premium(furnished, demoCostBook);
    const groups = premiumGroups(counted, furnished);
    expect(groups.map(({ name }) => name).toSorted()).toEqual([
      "Connections",
      "Openings",
      "Posts and beams",
      "The engineer",
    ]);
    expect(groups.at(-1)?.hand).toBe("engineer");
    expect(groups.reduce((sum, { money }) => sum + money, 0)).toBeCloseTo(counted.total, 9);
  });

  it("name pads by what makes them cost, which under the demo's containers is their size, no post standing on them", () => {
    expect(demoScheme.posts).toEqual([]);
    const names = premiumGroups(premium(demoScheme, demoCostBook), demoScheme).map(({ name }) => name);
    expect(names).toContain("Pads beyond the plain stack");
  });
});

describe("what stands apart", () => {
  it("is said once any mark has no answer, and is not said of what is only unchecked", () => {
    const of = (...verdicts: Mark["verdict"][]) =>
      premium(
        furnished,
        demoCostBook,
        verdicts.map((verdict, at) => mark(verdict, `m${at}`)),
      );
    expect(apartWords(of("works with steel", "not checked"))).toBeUndefined();
    expect(apartWords(of("needs the engineer"))).toMatch(/^One place stands apart without a price/);
    expect(apartWords(of("needs the engineer", "does not work"))).toMatch(/^2 places stand apart/);
    expect(uncheckedWords(of("not checked", "not checked"))).toMatch(/^2 places are priced as drawn and not checked/);
    expect(uncheckedWords(of("works as built"))).toBeUndefined();
  });
});

describe("addsWords", () => {
  it.each([
    [6104, "It adds $6,100 to the premium."],
    [-900, "It saves $900 of the premium."],
    [0.4, "It costs nothing more."],
  ])("%d: %s", (money, words) => {
    expect(addsWords(money, "USD")).toBe(words);
  });
});

describe("lastWord", () => {
  const shown = (revision: string, requestId: string | null, latest: boolean) =>
    ({ decision: { revision, requestId }, stale: [], latest }) as unknown as DecisionShown;
  it("is the latest on that very subject", () => {
    const given = [shown("A", null, false), shown("A", "r", true), shown("A", null, true), shown("B", null, true)];
    expect(lastWord(given, { revision: "A", requestId: null })).toBe(given[2]);
    expect(lastWord(given, { revision: "A", requestId: "r" })).toBe(given[1]);
    expect(lastWord(given, { revision: "C", requestId: null })).toBeUndefined();
    expect(lastWord(undefined, { revision: "A", requestId: null })).toBeUndefined();
  });
});
