import type { RunDifference } from "@cornerway/schema";
import { expect, it } from "vitest";
import { differenceLines } from "../../src/wording/difference-lines.ts";

const digest = "a".repeat(64);
const gravity = "load path, and strength under gravity loads" as const;
const all = "load path, and strength under all loads" as const;
const nothing: RunDifference = {
  before: { engineVersion: "0.1.0", resultDigest: digest },
  after: { engineVersion: "0.2.0", resultDigest: "b".repeat(64) },
  ...{ same: false, scope: { before: all, after: all }, whole: { before: "works as built", after: "works as built" } },
  ...{ units: [], appeared: [], gone: [], turned: [], heavier: [] },
};
const lines = (more: Partial<RunDifference>) => differenceLines({ ...nothing, ...more }, (id) => id.toUpperCase());

it("two runs that say the same say so, and numbers alone are told apart from verdicts", () => {
  expect(lines({ same: true })).toEqual(["The same to the last digit."]);
  expect(lines({})).toEqual(["Numbers moved; no verdict and no mark is another."]);
});

it("what turned, came and went is told unit by unit and counted mark by mark", () => {
  const mark = { markId: "m1", verdict: "does not work" as const };
  expect(
    lines({
      scope: { before: gravity, after: all },
      whole: { before: "works as built", after: "does not work" },
      units: [{ unitId: "g1", before: null, after: "does not work" }],
      turned: [{ markId: "m2", before: "works as built", after: "does not work" }],
      ...{ appeared: [mark], gone: [mark, mark], heavier: [] },
    }),
  ).toEqual([
    `Judged now: ${all}; before: ${gravity}.`,
    "The whole: Works as built before, Does not work now.",
    "G1: not told of before, Does not work now.",
    "1 mark has another verdict.",
    "1 mark is new.",
    "2 marks are no longer there.",
  ]);
});
