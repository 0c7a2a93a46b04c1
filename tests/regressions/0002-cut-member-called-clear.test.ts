import { assess } from "@cornerway/engine";
import { elementNames, markSentences, readers } from "@cornerway/schema";
import { expect, it } from "vitest";
import { factsOf } from "../support/marks-of.ts";
import { padsUnder, schemeOf } from "../support/scheme-of.ts";

const unit = { id: "a", type: "1AAA" as const, x: 0, y: 0 };
const hatch = { id: "o1", in: "a", face: "roof" as const, use: "hatch" as const, at: 5000, width: 900, height: 900 };
// The front post is 160 mm wide on the side (generic specification): a door from 100 mm takes 60 mm of it.
const door = { id: "o1", in: "a", face: "left" as const, use: "door" as const, at: 100, sill: 175, width: 1000 };

it("a hatch that cuts the top side rail is not also said to stay clear of rails", () => {
  const scheme = schemeOf({ units: [unit], pads: padsUnder(unit), cuts: [{ ...hatch, sill: 0 }] });
  const assessment = assess(scheme);
  expect(assessment.marks.map(({ id }) => id)).toEqual(["member-cut:o1+a:top-side-rail"]);
  for (const mark of assessment.marks)
    for (const reader of readers)
      expect(markSentences(mark, elementNames(scheme), reader).body).not.toMatch(/clear of/i);
});

it("a door into the corner post is given no distance of less than nothing from it", () => {
  const assessment = assess(schemeOf({ units: [unit], pads: padsUnder(unit), cuts: [{ ...door, height: 2100 }] }));
  expect(factsOf(assessment, "member-cut").map(({ member }) => member)).toEqual(["corner post"]);
  expect(factsOf(assessment, "opening-in-sheet")).toEqual([]);
});

it("a hatch clear of the rails still says how far it stays from the ends", () => {
  const assessment = assess(schemeOf({ units: [unit], pads: padsUnder(unit), cuts: [{ ...hatch, sill: 700 }] }));
  expect(factsOf(assessment, "opening-in-sheet")).toHaveLength(1);
});
