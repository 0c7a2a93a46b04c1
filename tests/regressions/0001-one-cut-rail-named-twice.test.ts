import { assess } from "@cornerway/engine";
import { expect, it } from "vitest";
import { factsOf } from "../support/marks-of.ts";
import { padsUnder, schemeOf } from "../support/scheme-of.ts";

// Two 40 ft units with 1156 mm between them: their outer hole lines are 2438 + 1156 + 2259 = 5853 mm apart, the hole
// spacing S of a 20 ft unit (ISO 668 Table A.1, from memory). It lies across them at mid-length, on their outer rails.
const low = [
  { id: "l1", type: "1AAA" as const, x: 0, y: 0 },
  { id: "l2", type: "1AAA" as const, x: 0, y: 2438 + 1156 },
];
const across = { id: "t1", type: "1CCC" as const, x: 0, y: (2438 + 1156) / 2, z: 2896, turn: 90 };
// 6 m out of the middle of the outer side of l1, through its top rail (underside 2896 − 6 − 60 = 2830 mm).
const cut = { id: "o1", in: "l1", face: "right" as const, at: 3096, sill: 180, width: 6000, height: 2700 };
const assessment = assess(
  schemeOf({ units: [...low, across], pads: low.flatMap((unit) => padsUnder(unit)), cuts: [cut] }),
);

it("two corners over the same cut rail are one cause and one mark", () => {
  expect(factsOf(assessment, "load-over-opening").map(({ id }) => id)).toEqual(["load-over-opening:o1+l1+t1"]);
});

it("no two marks share an identity", () => {
  const ids = assessment.marks.map(({ id }) => id);
  expect(new Set(ids).size).toBe(ids.length);
});
