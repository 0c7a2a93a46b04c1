import { elementNames, emptyScheme, markSentences, type Mark } from "@cornerway/schema";
import { expect, it } from "vitest";

const markOf = (count: number): Mark => ({
  id: "cross-members-cut:o1+a",
  verdict: "not checked",
  certainty: "common practice",
  elements: ["o1", "a"],
  at: { xMm: 0, yMm: 0, zMm: 0 },
  fact: { kind: "cross-members-cut", count },
  basis: "Cross members taken at 300 mm centres.",
});
const said = (count: number) => markSentences(markOf(count), elementNames(emptyScheme), "architect").body;

it("a hole that cuts no cross member is not said to need them trimmed", () => {
  expect(said(0)).toBe(
    "o1 cuts no cross member in the floor of a. Their places are taken, not measured; measure them before it is cut.",
  );
  expect(said(10)).toBe(
    "o1 cuts about 10 cross members in the floor of a. The hole needs trimming, which is not judged yet.",
  );
});
