import { assess } from "@cornerway/engine";
import { elementNames, markSentences } from "@cornerway/schema";
import { expect, it } from "vitest";
import { factsOf, verdictOf } from "../support/marks-of.ts";
import { padsUnder, schemeOf } from "../support/scheme-of.ts";

const a = { id: "a", type: "1AAA" as const, x: 0, y: 0 };
const pads = padsUnder(a);
const q = (top: number) => [...pads, { id: "q", x: 0, y: 1190, top }];
const collisions = (drawn: typeof pads) => factsOf(assess(schemeOf({ units: [a], pads: drawn })), "collision");

it("a pad 200 mm above the underside of a corner is in the unit, not missing under it", () => {
  const scheme = schemeOf({ units: [a], pads: pads.map((pad, at) => (at === 0 ? { ...pad, top: 200 } : pad)) });
  const assessment = assess(scheme);
  const [mark] = assessment.marks;
  expect(factsOf(assessment, "collision")).toMatchObject([{ id: "collision:a+a-pad-0", depthMm: 200 }]);
  expect(verdictOf(assessment, "a")).toBe("does not work");
  expect(mark === undefined ? "" : markSentences(mark, elementNames(scheme), "architect").body).toMatch(
    /^U1 and B2 are drawn in one place, 200 mm into each other\./,
  );
});

it("a pad under a rail may rise into the 12.5 mm recess of the base (ISO 1496-1, from memory) and no further", () => {
  expect(collisions(q(0))).toEqual([]);
  expect(collisions(q(12.5))).toEqual([]);
  expect(collisions(q(30))).toMatchObject([{ depthMm: 17.5 }]);
});

it("pads level with the fittings are in no unit", () => {
  expect(collisions(pads)).toEqual([]);
});
